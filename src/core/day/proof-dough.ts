import { doughClock } from '../clock/dough-clock.ts';
import { growthForRise } from '../clock/rise.ts';
import { TAU, temperatureAt, type Path } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { dentEvidence } from '../readiness/evidence.ts';
import { oncePerLook } from '../readiness/one-look.ts';
import {
  beliefOf,
  openPosterior,
  quantile,
  weighIn,
  type Posterior,
} from '../readiness/posterior.ts';
import { HOUR, type Hours, type Instant } from '../units.ts';
import { bulkDough } from './bulk-dough.ts';
import { temperaturePath } from './dough-path.ts';
import type { WaitInput } from './waits.ts';
import { HORIZON } from './window.ts';

/** What handling does to a dough's speed, as a scatter of ln v: proof has a doubt of its own. Judgement. */
const HANDLED_SD = 0.2;
/** Time constant of a shaped loaf in the room, h. Common practice, no source. */
const LOAF_TAU: Hours = 4;

/** A shaped loaf: when its bulk ended, its way since, what it had grown by then, and the belief. */
export interface ProofDough {
  readonly begin: Instant;
  readonly path: Path;
  /** Growth at the end of bulk. */
  readonly grown: number;
  /** Of ln v since the end of bulk, pokes weighed in. */
  readonly posterior: Posterior;
  /** Of ln v in bulk: what the next bake carries on, since proof never sees a volume. */
  readonly bulk: Posterior;
}

/**
 * A dough from the end of its bulk on, in the room. Joined later, it is taken to have risen as far as
 * its process wants and to have the room's temperature.
 */
export function proofDough(input: WaitInput): ProofDough {
  const { recipe, entered, now, seen } = input;
  const clock = doughClock(recipe.formula);
  const began = entered['shape.divide'] ?? entered['shape.scoop'];
  const begin = Math.min(now, began ?? now);
  const before = seen.filter(({ at }) => at <= begin);
  const dough = bulkDough({ ...input, now: begin, seen: before }, TAU.bowl);
  const hours = (begin - dough.begin) / HOUR;
  const celsius = temperatureAt(dough.path, hours);
  const v = Math.exp(quantile(dough.posterior, 0.5));
  const walked = hours > 0 ? v * theta(dough.path, 0, hours) : 0;
  const grown = walked > 0 ? walked : growthForRise(clock.rise, clock.p, celsius);
  const body = { ...input, begin, hours: HORIZON, tau: LOAF_TAU, start: celsius };
  const path = temperaturePath(body).map((stretch) => ({ ...stretch, factor: clock.salted }));
  const handled = openPosterior({ mean: beliefOf(dough.posterior).mean, sd: HANDLED_SD });
  const posterior = oncePerLook(seen).reduce((belief, { at, reading }) => {
    if (reading.what !== 'poke' || reading.dent === 'unsure' || at < begin) return belief;
    const then = (at - begin) / HOUR;
    const stands = { theta: theta(path, 0, then), p: clock.p, celsius: temperatureAt(path, then) };
    return weighIn(belief, dentEvidence(reading.dent, grown, stands));
  }, handled);
  return { begin, path, grown, posterior, bulk: dough.posterior };
}
