import { saneCelsius } from '../clock/doubt.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { TAU } from '../clock/stretch.ts';
import { openPosterior, quantile } from '../readiness/posterior.ts';
import { HOUR } from '../units.ts';
import { roomOf, temperaturePath } from './dough-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { beganIn, HORIZON, readyMarks } from './window.ts';

/**
 * The levain's ready window in the kitchen, from its feed, and `until`: the end of what is usable
 * for a starter of the believed vigour. Of the readings only the kitchen's speaks of the jar.
 */
export function levainWait(input: WaitInput): Wait {
  const { recipe, entered, prior, kitchen } = input;
  // Not yet leads back here with a new entry; the feed, some minutes before, is when it began.
  const begin = input.again
    ? beganIn(entered, ['levain.feed', 'levain.ripening', 'levain.look'], input.now)
    : input.now;
  const ripe = ripeGrowth(seedShare(recipe.formula.levain));
  const seen = input.seen.filter(({ reading }) => reading.what === 'kitchenTemperature');
  const body = { kitchen, seen, begin, hours: HORIZON, tau: TAU.jar };
  const path = temperaturePath(body);
  const posterior = openPosterior(prior);
  const { marks, doubt } = readyMarks(
    begin,
    { ...input, seen, posterior, doubt: saneCelsius(roomOf(body).at(-1)!.celsius).doubt },
    readyCurve(path, 0, HORIZON, () => ripe),
  );
  const usable = readyCurve(path, 0, HORIZON, () => ripe + USABLE);
  const until = usable(Math.exp(quantile(posterior, 0.5))) ?? HORIZON;
  return {
    marks: { ...marks, until: Math.round(begin + until * HOUR) },
    belief: prior,
    model: MODEL,
    ...(doubt === null ? {} : { doubt }),
  };
}
