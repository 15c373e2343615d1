import type { CallKind, Stop } from '../../machines/ports.ts';

export const CALLS: readonly CallKind[] = ['look', 'act', 'hot'];
/** To come to the next room and shut its door, ms. Judgement. */
const WALK_MS = 10_000;
/** A call's own words, and a breath after them, ms. */
const EACH_MS = 4_000;
const ROUNDS = 3;

/**
 * The three calls one after the other, as softly as they begin, and the round of them three times.
 * `sounding` is told which one does, and null when it is over; stopped, it is told nothing more.
 */
export function playCalls(
  ring: (kind: CallKind) => Stop,
  sounding: (kind: CallKind | null) => void,
): Stop {
  let silence: Stop = () => undefined;
  let timer: ReturnType<typeof setTimeout>;
  const play = (n: number): void => {
    silence();
    const kind = n < ROUNDS * CALLS.length ? CALLS[n % CALLS.length]! : null;
    sounding(kind);
    if (kind === null) return;
    silence = ring(kind);
    timer = setTimeout(() => play(n + 1), EACH_MS);
  };
  timer = setTimeout(() => play(0), WALK_MS);
  return () => {
    clearTimeout(timer);
    silence();
  };
}
