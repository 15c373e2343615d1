import { doughClock } from '../clock/dough-clock.ts';
import { hoursUntil } from '../clock/hours-until.ts';
import { growthForRise } from '../clock/rise.ts';
import { kitchenPath } from './kitchen-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { HORIZON, readyMarks } from './window.ts';

/**
 * The bulk's ready window: the wanted rise by the dough clock (CO₂ made less CO₂ held), counted
 * from the minute levain met flour, or from now where the bake was joined with the dough mixed.
 */
export function bulkWait(input: WaitInput): Wait {
  const { recipe, entered, belief, kitchen, readings } = input;
  const clock = doughClock(recipe.formula);
  const begin = entered['mix.first'] ?? entered['bulk.proving'] ?? input.now;
  const saltedAt = entered['mix.first'] === undefined ? null : (entered['mix.work'] ?? begin);
  const path = kitchenPath(input, begin, HORIZON, { ...clock, saltedAt });
  const marks = readyMarks(begin, input, (v) =>
    hoursUntil(path, 0, HORIZON, (celsius) => growthForRise(clock.rise, clock.p, celsius) / v),
  );
  const measured = readings['doughTemperature']?.reading;
  const celsius = measured && 'celsius' in measured ? measured.celsius : kitchen;
  const doubt = clock.doubt(celsius);
  return { marks, belief, model: MODEL, ...(doubt === null ? {} : { doubt }) };
}
