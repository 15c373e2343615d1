import type { Doubt } from '../clock/doubt.ts';
import { beliefOf, quantile, type Posterior } from '../readiness/posterior.ts';
import type { Seen } from '../records/seen.ts';
import type { BakeStage } from '../records/stage.ts';
import { HOUR, MINUTE, type Hours, type Instant } from '../units.ts';

/** Hours no wait is reckoned beyond; later than that the clock does not know. Judgement. */
export const HORIZON: Hours = 72;

/** The least minutes to any look, and to the next look after a "not yet". Judgement. */
const SOON = 1;
const AGAIN = { least: 20, most: 60 } as const;

/** Outside what the clock was fitted to, the window is this much wider either way. Judgement. */
const WIDER = 1.5;

/**
 * Which share of the ready time's belief is looked at first: tight 60 %, normal 50 %, vague 40 %.
 * A rule of thumb tried beside the exact cost of looking too early or too late; judgement.
 */
const lookAt = (sd: number): number => (sd >= 0.25 ? 0.4 : sd < 0.15 ? 0.6 : 0.5);

/** The first of these stages' last entries: a wait that a "not yet" led back to began before it. */
export function beganIn(
  entered: Readonly<Record<string, Instant>>,
  stages: readonly BakeStage[],
  otherwise: Instant,
): Instant {
  const entries = stages.flatMap((stage) => entered[stage] ?? []);
  return Math.min(otherwise, ...entries);
}

/** Readings that a window is reckoned from: an odd one among them, though confirmed, is told. */
const WEIGHED = ['doughTemperature', 'kitchenTemperature', 'rise'];
export const oddDoubt = (seen: readonly Seen[], weighed = WEIGHED): Doubt | null =>
  seen.some(({ reading }) => reading.odd && weighed.includes(reading.what)) ? 'oddReading' : null;

/** What the window itself leaves in doubt: no end within the horizon, or one long past. */
const windowDoubt = (likely: Hours | null, latest: Instant, now: Instant): Doubt | null =>
  likely === null ? 'tooCold' : now > latest ? 'laterThanModel' : null;

/**
 * The ready window of a wait that began at `begin`, as marks. `hoursAt(v)` gives hours from `begin`
 * to ready for a starter of vigour v (null: beyond the horizon). A fast starter sets the earliest
 * (10 %), a slow one the latest (90 %). `doubt` is what is already doubtful about it: such a window
 * is half as wide again; what the window itself leaves in doubt is told with it.
 */
export function readyMarks(
  begin: Instant,
  {
    now,
    posterior,
    again,
    seen,
    ...before
  }: {
    readonly now: Instant;
    readonly seen: readonly Seen[];
    readonly posterior: Posterior;
    readonly again: boolean;
    readonly doubt: Doubt | null;
  },
  hoursAt: (vigour: number) => Hours | null,
): {
  readonly marks: Record<'look' | 'earliest' | 'likely' | 'latest', Instant>;
  readonly doubt: Doubt | null;
} {
  const hours = (a: number): Hours | null => hoursAt(Math.exp(quantile(posterior, 1 - a)));
  const doubt = before.doubt ?? oddDoubt(seen);
  const middle = hours(0.5);
  const wide = doubt === null ? 1 : WIDER;
  const at = (share: number): Instant => {
    const from = middle ?? HORIZON;
    const to = hours(share) ?? HORIZON;
    return Math.round(begin + Math.min(HORIZON, Math.max(0, from + wide * (to - from))) * HOUR);
  };
  const likely = at(0.5);
  const latest = at(0.9);
  const half = (likely - now) / 2;
  const next = Math.min(AGAIN.most * MINUTE, Math.max(AGAIN.least * MINUTE, half));
  const first = Math.max(at(lookAt(beliefOf(posterior).sd)), now + SOON * MINUTE);
  return {
    marks: { look: again ? Math.round(now + next) : first, earliest: at(0.1), likely, latest },
    doubt: doubt ?? windowDoubt(middle, latest, now),
  };
}
