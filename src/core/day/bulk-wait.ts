import { doughClock } from '../clock/dough-clock.ts';
import { hoursUntil } from '../clock/hours-until.ts';
import { growthForRise } from '../clock/rise.ts';
import { TAU } from '../clock/stretch.ts';
import type { BakeStage } from '../records/stage.ts';
import { kitchenPath } from './kitchen-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { beganIn, HORIZON, readyMarks } from './window.ts';

/** Stages with levain and flour together; a bake joined later begins at the first it was in. */
const MIXED: readonly BakeStage[] = [
  'mix.first',
  'mix.rest',
  'mix.salt',
  'mix.work',
  'mix.temperature',
  'bulk.between',
  'bulk.fold',
  'bulk.spread',
  'bulk.scatter',
  'bulk.roll',
  'bulk.proving',
  'bulk.look',
];

/**
 * The bulk's ready window: the wanted rise by the dough clock (CO₂ made less CO₂ held), counted
 * from the minute levain met flour, or from now where the bake was joined with the dough mixed.
 * Limit: joined so, the time before is not known, and after a "not yet" only the last look is.
 */
export function bulkWait(input: WaitInput): Wait {
  const { recipe, entered, belief, kitchen, readings } = input;
  const clock = doughClock(recipe.formula);
  const begin = beganIn(entered, MIXED, input.now);
  const rate = { ...clock, saltedAt: entered['mix.work'] ?? null };
  const path = kitchenPath(input, begin, HORIZON, rate, TAU.bowl);
  const { marks, doubt } = readyMarks(begin, input, (v) =>
    hoursUntil(path, 0, HORIZON, (celsius) => growthForRise(clock.rise, clock.p, celsius) / v),
  );
  const measured = (readings['doughTemperature'] ?? readings['kitchenTemperature'])?.reading;
  const celsius = measured && 'celsius' in measured ? measured.celsius : kitchen;
  const told = clock.doubt(celsius) ?? doubt;
  return { marks, belief, model: MODEL, ...(told === null ? {} : { doubt: told }) };
}
