import { doughClock } from '../clock/dough-clock.ts';
import { growthForRise } from '../clock/rise.ts';
import { TAU, temperatureAt, type Path } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { dentEvidence } from '../readiness/evidence.ts';
import { coldEvidence } from '../readiness/cold-evidence.ts';
import { oncePerLook } from '../readiness/one-look.ts';
import {
  beliefOf,
  openPosterior,
  quantile,
  weighIn,
  type Posterior,
} from '../readiness/posterior.ts';
import { HOUR, MINUTE, type Celsius, type Hours, type Instant } from '../units.ts';
import { bulkDough } from './bulk-dough.ts';
import { loafPath } from './loaf-path.ts';
import type { WaitInput } from './waits.ts';

/** What handling does to a dough's speed, as a scatter of ln v: proof has a doubt of its own. Judgement. */
const HANDLED_SD = 0.2;

/** Minutes of hands from dividing to the baskets. Common practice, no source. */
const HANDS = 15;

/** A dough as its bulk ended: when, how warm, what it had grown by then, and the belief. */
export interface ShapedDough {
  readonly begin: Instant;
  readonly celsius: Celsius;
  /** Growth at the end of bulk. */
  readonly grown: number;
  /** Of ln v in bulk: what the next bake carries on, since proof never sees a volume. */
  readonly bulk: Posterior;
  /** The same with the doubt that handling adds. */
  readonly handled: Posterior;
}

/** A shaped loaf: its dough, its way since the end of bulk, and what is believed of it by now. */
export interface ProofDough extends ShapedDough {
  readonly path: Path;
  /** Prefermented share of flour, 0–1. */
  readonly p: number;
  /** Of ln v since the end of bulk, what was seen of the loaf weighed in. */
  readonly posterior: Posterior;
  /** Hour of the path at which a cold loaf was last seen, or went into the cold; null: it never did. */
  readonly coldSince: Hours | null;
}

/**
 * A dough as it is divided. Joined later, it is taken to have risen as far as its process wants and
 * to have the room's temperature; joined in the fridge, to have had its usual bench and counter before.
 */
export function shapedDough(input: WaitInput): ShapedDough {
  const { recipe, entered, now, seen, chilled } = input;
  const clock = doughClock(recipe.formula);
  const { benchRest, counter } = recipe.process;
  const shaping = (benchRest + counter + HANDS) * MINUTE;
  const joined = chilled === undefined ? undefined : chilled - shaping;
  const began = entered['shape.divide'] ?? entered['shape.scoop'] ?? joined;
  const begin = Math.min(now, began ?? now);
  const before = seen.filter(({ at }) => at <= begin);
  const dough = bulkDough({ ...input, now: begin, seen: before }, TAU.bowl);
  const hours = (begin - dough.begin) / HOUR;
  const celsius = temperatureAt(dough.path, hours);
  const v = Math.exp(quantile(dough.posterior, 0.5));
  const walked = hours > 0 ? v * theta(dough.path, 0, hours) : 0;
  return {
    begin,
    celsius,
    grown: walked > 0 ? walked : growthForRise(clock.rise, clock.p, celsius),
    bulk: dough.posterior,
    handled: openPosterior({ mean: beliefOf(dough.posterior).mean, sd: HANDLED_SD }),
  };
}

/** A shaped loaf from the end of its bulk on: in the room, in the fridge, and out again where it was. */
export function proofDough(input: WaitInput): ProofDough {
  const { recipe, seen, chilled } = input;
  const shaped = shapedDough(input);
  const { begin, grown } = shaped;
  const { p } = doughClock(recipe.formula);
  const path = loafPath(input, shaped);
  const inFridge = chilled === undefined ? null : Math.max(0, chilled - begin) / HOUR;
  let posterior = shaped.handled;
  let coldSince = inFridge;
  for (const { at, reading } of oncePerLook(seen).toSorted((a, b) => a.at - b.at)) {
    if (at < begin) continue;
    const then = (at - begin) / HOUR;
    const stands = { theta: theta(path, 0, then), p, celsius: temperatureAt(path, then) };
    if (coldSince !== null && then >= coldSince) {
      const evidence = coldEvidence(reading, grown, stands, then - coldSince);
      if (evidence === null) continue;
      posterior = weighIn(posterior, evidence);
      coldSince = then;
    } else if (reading.what === 'poke' && reading.dent !== 'unsure') {
      posterior = weighIn(posterior, dentEvidence(reading.dent, grown, stands));
    }
  }
  return { ...shaped, path, p, posterior, coldSince };
}
