import type { Doubt } from '../clock/doubt.ts';
import type { Belief } from '../readiness/belief.ts';
import type { BakeStage } from '../records/stage.ts';
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

/** The first of these stages' last entries: a wait that a "not yet" led back to began before it. */
export function beganIn(
  entered: Readonly<Record<string, Instant>>,
  stages: readonly BakeStage[],
  otherwise: Instant,
): Instant {
  const entries = stages.flatMap((stage) => entered[stage] ?? []);
  return Math.min(otherwise, ...entries);
}

/** What the window itself leaves in doubt: no end within the horizon, or one long past. */
const windowDoubt = (likely: Hours | null, latest: Instant, now: Instant): Doubt | null =>
  likely === null ? 'tooCold' : now > latest ? 'laterThanModel' : null;

/**
 * The ready window of a wait that began at `begin`, as marks. `hoursAt(v)` gives hours from `begin`
 * to ready for a starter of vigour v (null: beyond the horizon). A fast starter sets the earliest
 * (10 %), a slow one the latest (90 %), and the doubt the window itself leaves. Source of the first look: rule of thumb, judgement.
 */
export function readyMarks(
  begin: Instant,
  {
    now,
    belief,
    again,
  }: { readonly now: Instant; readonly belief: Belief; readonly again: boolean },
  hoursAt: (vigour: number) => Hours | null,
): {
  readonly marks: Record<'look' | 'earliest' | 'likely' | 'latest', Instant>;
  readonly doubt: Doubt | null;
} {
  const at = (hours: Hours | null): Instant => Math.round(begin + (hours ?? HORIZON) * HOUR);
  const hours = (z: number): Hours | null => hoursAt(vigour(belief, z));
  const middle = hours(0);
  const likely = at(middle);
  const latest = at(hours(-Z90));
  const half = (likely - now) / 2;
  const next = Math.min(AGAIN.most * MINUTE, Math.max(AGAIN.least * MINUTE, half));
  const first = Math.max(at(hours(lookZ(belief))), now + SOON * MINUTE);
  return {
    marks: {
      look: again ? Math.round(now + next) : first,
      earliest: at(hours(Z90)),
      likely,
      latest,
    },
    doubt: windowDoubt(middle, latest, now),
  };
}
