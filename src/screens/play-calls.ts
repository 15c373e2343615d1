import type { CallKind, Stop } from '../../machines/ports.ts';

export const CALLS: readonly CallKind[] = ['look', 'act', 'hot'];
/** To come to the next room and shut its door, ms. Judgement. */
const WALK_MS = 10_000;
/** A call's own words, and a breath after them, ms. */
const EACH_MS = 4_000;
const ROUNDS = 3;

/** How often the round of calls is played, and how long after the press. */
interface Rounds {
  readonly after: number;
  readonly rounds: number;
}
const FROM_AFAR: Rounds = { after: WALK_MS, rounds: ROUNDS };
/** Heard beside the tablet; the sound has this long to be armed. */
export const BESIDE: Rounds = { after: 500, rounds: 1 };

/**
 * The three calls one after the other, as softly as they begin, round after round. `sounding` is told
 * which one does, and null when it is over; stopped, it is told nothing more.
 */
export function playCalls(
  ring: (kind: CallKind) => Stop,
  sounding: (kind: CallKind | null) => void,
  { after, rounds }: Rounds = FROM_AFAR,
): Stop {
  let silence: Stop = () => undefined;
  let timer: ReturnType<typeof setTimeout>;
  const play = (n: number): void => {
    silence();
    const kind = n < rounds * CALLS.length ? CALLS[n % CALLS.length]! : null;
    sounding(kind);
    if (kind === null) return;
    silence = ring(kind);
    timer = setTimeout(() => play(n + 1), EACH_MS);
  };
  timer = setTimeout(() => play(0), after);
  return () => {
    clearTimeout(timer);
    silence();
  };
}
