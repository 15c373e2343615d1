import { saneCelsius } from '../clock/doubt.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { TAU } from '../clock/stretch.ts';
import type { Belief } from '../readiness/belief.ts';
import { FRIDGE_DAYS } from '../readiness/fridge-rest.ts';
import { beliefOf, openPosterior, quantile, type Posterior } from '../readiness/posterior.ts';
import { weighStarter } from '../readiness/starter-strength.ts';
import type { NightHours, Starter } from '../records/starter.ts';
import { DAY, HOUR, MINUTE, type Instant } from '../units.ts';
import { temperaturePath } from './dough-path.ts';
import type { Wait } from './waits.ts';
import { HORIZON, readyMarks } from './window.ts';

/** Written with the starter's instants. */
export const STARTER_MODEL = 'starter-1';

/** What its instants may depend on. */
export interface StarterInput {
  readonly starter: Starter;
  readonly now: Instant;
  /** What was believed as it was fed. */
  readonly prior: Belief;
  /** Null where every hour is one to be reminded in. */
  readonly night: NightHours | null;
}

/** Out of the fridge and not fed it is hungry, and wants its feed the same day, h. Common practice, no source. */
const UNFED = { remind: 4, until: 12 } as const;

/** The first instant from `at` on that is not in the night. */
export function notAtNight(at: Instant, night: NightHours | null): Instant {
  if (night === null || night.from === night.to) return at;
  const { midnight, from, to } = night;
  const minute = ((((at - midnight) / MINUTE) % 1440) + 1440) % 1440;
  const inside = from < to ? minute >= from && minute < to : minute >= from || minute < to;
  if (!inside) return at;
  return Math.round(at + ((to - minute + 1440) % 1440) * MINUTE);
}

/** A starter fed 1 : flour : flour that rises on the counter: its ready window, and the end of what is usable. */
function risingMarks(
  { at: begin, flour, celsius }: NonNullable<Starter['fed']>,
  now: Instant,
  posterior: Posterior,
): Pick<Wait, 'marks' | 'doubt'> {
  const ripe = ripeGrowth(seedShare({ hydration: 1, feed: { seed: 1, flour } }));
  const path = temperaturePath({
    kitchen: celsius,
    seen: [],
    begin,
    hours: HORIZON,
    tau: TAU.jar,
  });
  const { doubt: warmth } = saneCelsius(celsius);
  const curve = readyCurve(path, 0, HORIZON, () => ripe);
  const { marks, doubt } = readyMarks(
    begin,
    { now, seen: [], posterior, again: false, doubt: warmth },
    curve,
  );
  const usable = readyCurve(path, 0, HORIZON, () => ripe + USABLE);
  const until = usable(Math.exp(quantile(posterior, 0.5))) ?? HORIZON;
  const { earliest, likely, latest } = marks;
  return {
    marks: { earliest, likely, latest, until: Math.round(begin + until * HOUR) },
    ...(doubt === null || doubt === 'laterThanModel' ? {} : { doubt }),
  };
}

/**
 * The starter's instants where it stands: `likely`, `earliest` and `latest` to be ripe after a feed,
 * `until` when it is good there, and `remind`, never in the night: what waits to be fed does not spoil.
 * Source: the levain's clock on the counter; in the fridge weeks by common practice, none published.
 */
export function starterWait({ starter, now, prior, night }: StarterInput): Wait {
  const { put, fed } = starter;
  const begin = put?.at ?? now;
  const remindAt = (at: Instant) => notAtNight(Math.round(at), night);
  if (put?.where === 'fridge') {
    const until = begin + FRIDGE_DAYS * DAY;
    return { marks: { until, remind: remindAt(until) }, model: STARTER_MODEL };
  }
  if (!put?.fresh || fed === undefined) {
    const marks = {
      until: begin + UNFED.until * HOUR,
      remind: remindAt(begin + UNFED.remind * HOUR),
    };
    return { marks, model: STARTER_MODEL };
  }
  const weighed = weighStarter(starter, prior);
  const { marks, doubt } = risingMarks(fed, now, weighed ?? openPosterior(prior));
  const likely = remindAt(marks['likely']!);
  // A sign seen after its reminder rings no bell once more.
  const remind = likely > now ? likely : (starter.marks['remind'] ?? likely);
  return {
    marks: { ...marks, remind },
    ...(weighed === null ? {} : { belief: beliefOf(weighed) }),
    ...(doubt ? { doubt } : {}),
    model: STARTER_MODEL,
  };
}
