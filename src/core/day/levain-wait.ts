import { saneCelsius } from '../clock/doubt.ts';
import { hoursUntil } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { TAU } from '../clock/stretch.ts';
import { HOUR } from '../units.ts';
import { kitchenPath } from './kitchen-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { beganIn, HORIZON, readyMarks } from './window.ts';

/**
 * The levain's ready window in the kitchen, from its feed, and `until`: the end of what is usable
 * for a starter of the believed vigour. Of the readings only the kitchen's speaks of the jar.
 */
export function levainWait(input: WaitInput): Wait {
  const { recipe, entered, belief, kitchen } = input;
  // Not yet leads back here with a new entry; the feed, some minutes before, is when it began.
  const begin = input.again
    ? beganIn(entered, ['levain.feed', 'levain.ripening', 'levain.look'], input.now)
    : input.now;
  const ripe = ripeGrowth(seedShare(recipe.formula.levain));
  const room = input.readings['kitchenTemperature'];
  const readings = room ? { kitchenTemperature: room } : {};
  const rate = { unsalted: 1, salted: 1, saltedAt: null };
  const path = kitchenPath({ kitchen, readings }, begin, HORIZON, rate, TAU.jar);
  const hoursTo = (m: number) => hoursUntil(path, 0, HORIZON, () => m);
  const { marks, doubt } = readyMarks(begin, input, (v) => hoursTo(ripe / v));
  const usable = hoursTo((ripe + USABLE) / Math.exp(belief.mean)) ?? HORIZON;
  const measured = room && 'celsius' in room.reading ? room.reading.celsius : kitchen;
  const told = saneCelsius(measured).doubt ?? doubt;
  return {
    marks: { ...marks, until: Math.round(begin + usable * HOUR) },
    belief,
    model: MODEL,
    ...(told === null ? {} : { doubt: told }),
  };
}
