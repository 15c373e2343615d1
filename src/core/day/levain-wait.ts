import { saneCelsius } from '../clock/doubt.ts';
import { hoursUntil } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { HOUR } from '../units.ts';
import { kitchenPath } from './kitchen-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { HORIZON, readyMarks } from './window.ts';

/**
 * The levain's ready window at the kitchen's temperature, from its feed, and `until`: the end of
 * what is usable for a starter of the believed vigour.
 */
export function levainWait(input: WaitInput): Wait {
  const { recipe, entered, belief, kitchen } = input;
  // Not yet leads back here with a new entry; the feed's own end is when the wait first began.
  const begin = input.again ? (entered['levain.feed'] ?? input.now) : input.now;
  const ripe = ripeGrowth(seedShare(recipe.formula.levain));
  const path = kitchenPath({ kitchen, readings: {} }, begin, HORIZON, {
    unsalted: 1,
    salted: 1,
    saltedAt: null,
  });
  const hoursTo = (m: number) => hoursUntil(path, 0, HORIZON, () => m);
  const marks = readyMarks(begin, input, (v) => hoursTo(ripe / v));
  const usable = hoursTo((ripe + USABLE) / Math.exp(belief.mean)) ?? HORIZON;
  const { doubt } = saneCelsius(kitchen);
  return {
    marks: { ...marks, until: Math.round(begin + usable * HOUR) },
    belief,
    model: MODEL,
    ...(doubt === null ? {} : { doubt }),
  };
}
