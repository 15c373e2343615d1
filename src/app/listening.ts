import type { EarAsk, EarTold } from '../../machines/ear-port.ts';
import {
  beginListening,
  stepListening,
  type ListeningEvent,
  type ListeningSnapshot,
  type Made,
} from '../../machines/listening/listening.ts';
import type { Stop } from '../../machines/ports.ts';
import type { Heard } from '../core/ear/heard.ts';
import type { EarPhrase } from '../core/ear/phrases.ts';
import type { EarShown } from '../core/ear/shown.ts';

type Untimed<E> = E extends { readonly at: number } ? Omit<E, 'at'> : never;
export type Told = Untimed<ListeningEvent>;

/** What a saying comes to, and what is done once the machine has heard of it. */
export interface Meant {
  readonly made: Made;
  readonly then: () => void;
}

export interface ListeningParts {
  /** ms on a clock that does not run back. */
  now(): number;
  later(ms: number, then: () => void): Stop;
  /** `opens`: it was shut till now, and does not only hear for something else from now on. */
  listen(ask: EarAsk, tell: (told: EarTold) => void, opens: boolean): Stop;
  /** Who is listened to now, and for what; null: the page offers nothing. */
  ask(): EarAsk | null;
  mean(heard: Heard, active: readonly EarPhrase[]): Meant;
  /** An opening for these has ended by itself. */
  onEnded(active: readonly EarPhrase[]): void;
  onShown(shown: EarShown): void;
}

export interface Listening {
  tell(told: Told): void;
  /** The page may offer something else now. */
  refresh(): void;
  state(): EarShown['state'];
  stop: Stop;
}

const keyOf = ({ engine, people, active }: EarAsk): string =>
  [engine, ...people.map(({ id }) => id), ...active].join(' ');

/** As it is told: until the microphone is there nobody is asked to speak. */
const stateOf = ({ value }: ListeningSnapshot): EarShown['state'] =>
  value === 'opening' || value === 'afterPress' || value === 'heard' ? 'shut' : value;

/** Steps the machine, and does what it wants of microphone and clock. */
export function makeListening(parts: ListeningParts): Listening {
  let at = beginListening();
  let open: { readonly ask: EarAsk; stop: Stop } | null = null;
  let alarm: { readonly until: number; readonly stop: Stop } | null = null;
  const waiting: Told[] = [];
  let stepping = false;

  const letGo = (): void => {
    const was = open;
    open = null;
    was?.stop();
  };
  const hear = (told: EarTold): void => {
    if (told.kind === 'open') tell({ type: 'open' });
    else if (told.kind === 'speaks') tell({ type: 'speaks', speaks: told.speaks });
    else if (told.kind === 'over') tell({ type: 'over', why: told.why });
    else if (told.kind === 'said' && open && at.hasTag('hears')) {
      const { made, then } = parts.mean(told.heard, open.ask.active);
      // The microphone is let go before anything is pressed that may sound.
      tell({ type: 'said', made });
      then();
    }
  };
  const listen = (ask: EarAsk): void => {
    const opens = open === null;
    letGo();
    const mine = { ask, stop: (): void => undefined };
    open = mine;
    const hearing = (told: EarTold): void => void (open === mine && hear(told));
    const stop = parts.listen(ask, hearing, opens);
    if (open === mine) mine.stop = stop;
    else stop();
  };
  const arm = (): void => {
    const { until } = at.context;
    if (alarm?.until === (until ?? undefined)) return;
    alarm?.stop();
    alarm =
      until === null
        ? null
        : {
            until,
            stop: parts.later(Math.max(0, until - parts.now()), () => {
              alarm = null;
              tell({ type: 'due' });
            }),
          };
  };
  const show = (): void =>
    parts.onShown({
      state: stateOf(at),
      active: at.hasTag('hears') ? (open?.ask.active ?? []) : [],
    });
  const follow = (told: Told): void => {
    const ended = open !== null && !at.hasTag('listens') ? open.ask.active : null;
    if (ended) letGo();
    if (at.hasTag('listens') && open === null) {
      const ask = parts.ask();
      if (ask) listen(ask);
      else waiting.push({ type: 'unasked' });
    }
    arm();
    show();
    const byItself = told.type === 'due' || (told.type === 'said' && told.made === 'key');
    if (ended && byItself) parts.onEnded(ended);
  };
  const tell = (told: Told): void => {
    waiting.push(told);
    if (stepping) return;
    stepping = true;
    try {
      for (let next = waiting.shift(); next; next = waiting.shift()) {
        at = stepListening(at, { ...next, at: parts.now() });
        follow(next);
      }
    } finally {
      stepping = false;
    }
  };
  return {
    tell,
    refresh() {
      if (open === null) return;
      const ask = parts.ask();
      if (ask === null) return tell({ type: 'unasked' });
      if (keyOf(ask) === keyOf(open.ask)) return;
      listen(ask);
      show();
    },
    state: () => stateOf(at),
    stop() {
      letGo();
      alarm?.stop();
      alarm = null;
    },
  };
}
