import { doughClock } from '../clock/dough-clock.ts';
import { TAU, type Path } from '../clock/stretch.ts';
import { driftPath } from '../heat/drift.ts';
import { oncePerLook } from '../readiness/one-look.ts';
import type { Posterior } from '../readiness/posterior.ts';
import { weighDough, type DoughSign } from '../readiness/weigh-dough.ts';
import { IN_BOWL } from '../records/in-bowl.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, type Celsius, type Hours, type Instant } from '../units.ts';
import { fillingChill } from './filling-chill.ts';
import { roomOf, salted, temperaturePath } from './dough-path.ts';
import type { WaitInput } from './waits.ts';
import { beganIn, HORIZON } from './window.ts';

/** A dough in its bowl: when levain met flour, its way since, and what is believed of its starter. */
export interface BulkDough {
  readonly begin: Instant;
  readonly path: Path;
  /** The way of a sample of it in a jar, which follows the room faster. */
  readonly jar: Path;
  readonly posterior: Posterior;
  /** Its temperature as last measured, or the room's. */
  readonly celsius: Celsius;
}

const signOf = ({ at, reading }: Seen, begin: Instant): DoughSign[] => {
  const hours: Hours = (at - begin) / HOUR;
  if (hours < 0) return [];
  if (reading.what === 'rise' && reading.of === 'dough') {
    const { percent, in: where, atLeast = false } = reading;
    return [{ hours, rise: percent, inJar: where === 'jar', atLeast }];
  }
  if (reading.what !== 'edge') return [];
  // A dome without bubbles, or bubbles under a flat edge, speak for neither.
  const { edge, bubbles } = reading;
  if (edge !== 'flat' && bubbles !== 'none') return [{ hours, domed: true }];
  return edge === 'flat' && bubbles === 'none' ? [{ hours, domed: false }] : [];
};

/** The dough of a bake up to its bulk's end, with everything seen of it weighed in. `tau` in h. */
export function bulkDough(input: WaitInput, tau: Hours): BulkDough {
  const { recipe, entered, prior, kitchen, seen, now } = input;
  const clock = doughClock(recipe.formula);
  const begin = beganIn(entered, IN_BOWL, now);
  const chill = fillingChill(input, begin);
  const body = { kitchen, seen, begin, hours: HORIZON, tau, chill };
  const salting = { ...clock, saltedAt: entered['mix.work'] ?? null };
  const bowl = temperaturePath(body);
  const sample = { from: bowl[0]!.from, tau: TAU.jar, offset: 0 };
  const path = salted(bowl, begin, salting);
  const jar = salted(driftPath(sample, roomOf(body), HORIZON), begin, salting);
  const signs = oncePerLook(seen).flatMap((one) => signOf(one, begin));
  const measured = seen
    .toSorted((a, b) => a.at - b.at)
    .findLast(({ reading }) => reading.what === 'doughTemperature')?.reading;
  return {
    begin,
    path,
    jar,
    posterior: weighDough(prior, signs, { path, jar, p: clock.p }),
    celsius: measured && 'celsius' in measured ? measured.celsius : roomOf(body).at(-1)!.celsius,
  };
}
