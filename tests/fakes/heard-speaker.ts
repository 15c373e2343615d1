import type { OwnWords, Speaker } from '../../machines/ports.ts';
import type { Pace } from '../../src/core/speech/pace.ts';

export interface HeardSpeaker extends Speaker {
  /** What was asked to be said, in order, and how it ended. */
  readonly said: readonly {
    readonly words: string;
    readonly own: OwnWords | undefined;
    readonly pace: Pace;
    readonly ended: 'no' | 'over' | 'stopped';
  }[];
  /** Whether the device has a voice. */
  canRead: boolean;
  /** The words being said now are over. */
  finish(): void;
  /** Words could not be heard. */
  lose(): void;
}

/** A speaker whose words last until the test says that they are over. */
export function makeHeardSpeaker(): HeardSpeaker {
  const said: {
    words: string;
    own: OwnWords | undefined;
    pace: Pace;
    ended: 'no' | 'over' | 'stopped';
    done: () => void;
  }[] = [];
  const listeners = new Set<() => void>();
  return {
    said,
    canRead: true,
    reads() {
      return Promise.resolve(this.canRead);
    },
    onLost(then) {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    lose: () => listeners.forEach((then) => then()),
    say(words, own, pace = 'grown') {
      let done = () => {};
      const over = new Promise<void>((resolve) => (done = resolve));
      const line: (typeof said)[number] = { words, own, pace, ended: 'no', done };
      said.push(line);
      const stop = () => {
        if (line.ended === 'no') line.ended = 'stopped';
        done();
      };
      return { over, stop };
    },
    finish() {
      for (const line of said) {
        if (line.ended !== 'no') continue;
        line.ended = 'over';
        line.done();
      }
    },
  };
}
