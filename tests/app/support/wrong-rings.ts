import type { Instant } from '../../../src/core/units.ts';
import type { TimedRing } from '../../fakes/timed-sound.ts';
import type { OwedRing } from './owed-calls.ts';

/** A call as it began to be heard. */
export interface HeardRing extends Pick<TimedRing, 'kind' | 'late'> {
  /** True time since the walk began, ms. */
  readonly truth: number;
  /** The device's clock. */
  readonly wall: Instant;
  readonly id: string;
}

/** So much an alarm may be off, and so much its lateness, ms. */
export const WITHIN = 1_000;

/** What was heard against what had to be: each once, in order, in its time and as late as it is. The first of it. */
export function wrongRings(
  heard: readonly HeardRing[],
  owed: readonly OwedRing[],
): readonly string[] {
  const most = Math.max(heard.length, owed.length);
  for (let n = 0; n < most; n += 1) {
    const [is, wanted] = [heard[n], owed[n]];
    if (is === undefined) return [`Lost: ${wanted!.id} at ${wanted!.truth}.`];
    if (wanted === undefined) return [`Too much: ${is.id} at ${is.truth}.`];
    const isNear = Math.abs(is.truth - wanted.truth) <= WITHIN;
    const isMarked = wanted.late === null || Math.abs(is.late - wanted.late) <= WITHIN;
    if (is.id !== wanted.id || is.kind !== wanted.kind || !isNear || !isMarked) {
      return [`Heard ${JSON.stringify(is)}, not ${JSON.stringify(wanted)}.`];
    }
  }
  return [];
}
