import type { Belief } from '../readiness/belief.ts';
import { HOUR, MINUTE, type Hours, type Instant } from '../units.ts';

/** Standard normal quantiles: 90 %, and the 60 % that a vague estimate looks at. */
const Z90 = 1.2816;
const Z60 = 0.2533;

/** Hours no wait is reckoned beyond; later than that the clock does not know. Judgement. */
export const HORIZON: Hours = 72;

/** The least minutes to any look, and to the next look after a "not yet". Judgement. */
const SOON = 1;
const AGAIN = { least: 20, most: 60 } as const;

const vigour = ({ mean, sd }: Belief, z: number): number => Math.exp(mean + z * sd);

/** Which quantile of the ready time is looked at first: tight 60 %, normal 50 %, vague 40 %. */
const lookZ = ({ sd }: Belief): number => (sd >= 0.25 ? Z60 : sd < 0.15 ? -Z60 : 0);

/**
 * The ready window of a wait that began at `begin`, as marks. `hoursAt(v)` gives hours from `begin`
 * to ready for a starter of vigour v (null: beyond the horizon). A fast starter sets the earliest
 * (10 %), a slow one the latest (90 %). Source of the first look: rule of thumb, judgement.
 */
export function readyMarks(
  begin: Instant,
  {
    now,
    belief,
    again,
  }: { readonly now: Instant; readonly belief: Belief; readonly again: boolean },
  hoursAt: (vigour: number) => Hours | null,
): Record<'look' | 'earliest' | 'likely' | 'latest', Instant> {
  const at = (z: number): Instant =>
    Math.round(begin + (hoursAt(vigour(belief, z)) ?? HORIZON) * HOUR);
  const likely = at(0);
  const half = (likely - now) / 2;
  const next = Math.min(AGAIN.most * MINUTE, Math.max(AGAIN.least * MINUTE, half));
  const first = Math.max(at(lookZ(belief)), now + SOON * MINUTE);
  return {
    look: again ? Math.round(now + next) : first,
    earliest: at(Z90),
    likely,
    latest: at(-Z90),
  };
}
