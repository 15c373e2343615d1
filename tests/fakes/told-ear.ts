import type { Ear, EarAsk, EarTold } from '../../machines/ear-port.ts';
import type { NoTake } from '../../machines/ports.ts';
import type { EarTone } from '../../src/core/ear/ear-wave.ts';
import type { Saying } from '../../src/core/ear/person.ts';

/** An ear that hears what the test tells it. */
export interface ToldEar extends Ear {
  /** What it listens for now; null: it is shut. */
  readonly asked: EarAsk | null;
  /** How often a microphone was opened. */
  readonly opened: number;
  tell(told: EarTold): void;
  /** Somebody said the phrase that is taken. */
  said(sayings: readonly Saying[] | NoTake): void;
  /** What it sounded. */
  readonly tones: readonly EarTone[];
  /** What `fetch` answers. */
  here: boolean;
}

export function makeToldEar(): ToldEar {
  let asked: EarAsk | null = null;
  let hear: (told: EarTold) => void = () => undefined;
  let take: (sayings: readonly Saying[] | NoTake) => void = () => undefined;
  let opened = 0;
  const tones: EarTone[] = [];
  return {
    tones,
    here: true,
    get asked() {
      return asked;
    },
    get opened() {
      return opened;
    },
    tell(told) {
      if (told.kind === 'over') asked = null;
      hear(told);
    },
    said: (sayings) => take(sayings),
    fetch() {
      return Promise.resolve(this.here);
    },
    listen(ask, tell) {
      opened += 1;
      asked = ask;
      hear = tell;
      tell({ kind: 'open' });
      return () => {
        if (asked === ask) asked = null;
      };
    },
    tone(which) {
      tones.push(which);
      return Promise.resolve();
    },
    take() {
      opened += 1;
      const over = new Promise<readonly Saying[] | NoTake>((resolve) => (take = resolve));
      return { over, stop: () => take('silent'), cancel: () => take('stopped') };
    },
  };
}
