import { doughClock } from '../clock/dough-clock.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { growthForRise } from '../clock/rise.ts';
import { TAU } from '../clock/stretch.ts';
import { beliefOf } from '../readiness/posterior.ts';
import { bulkDough } from './bulk-dough.ts';
import { looksAtOnce } from './look-at-once.ts';
import { readyInWarmPlace } from './warm-place.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { HORIZON, readyMarks } from './window.ts';

/**
 * The bulk's ready window: the wanted rise by the dough clock (CO₂ made less CO₂ held), counted
 * from the minute levain met flour, or from now where the bake was joined with the dough mixed, for
 * the vigour believed once everything seen of this dough is weighed in. `warmed`, where it is much
 * sooner: when it is likely ready in a warm place. Signs that say so are looked at at once.
 * Limit: joined so, the time before is not known, and after a "not yet" only the last look is.
 */
export function bulkWait(input: WaitInput): Wait {
  const clock = doughClock(input.recipe.formula);
  const dough = bulkDough(input, TAU.bowl);
  const { begin, path, posterior, celsius } = dough;
  const needed = (c: number): number => growthForRise(clock.rise, clock.p, c);
  const { marks, doubt } = readyMarks(
    begin,
    { ...input, posterior, doubt: clock.doubt(celsius) },
    readyCurve(path, 0, HORIZON, needed),
  );
  const atOnce = input.stage === 'bulk.proving' ? looksAtOnce(input) : null;
  const look = atOnce ?? marks.look;
  const from = Math.max(input.now, ...input.seen.map(({ at }) => at));
  const warmed = readyInWarmPlace(dough, { from, likely: marks.likely, tau: TAU.bowl }, needed);
  return {
    marks: { ...marks, look, ...(warmed === null ? {} : { warmed }) },
    belief: beliefOf(posterior),
    model: MODEL,
    ...(doubt === null ? {} : { doubt }),
  };
}
