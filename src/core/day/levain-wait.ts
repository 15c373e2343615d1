import { saneCelsius } from '../clock/doubt.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { TAU } from '../clock/stretch.ts';
import { openPosterior, quantile } from '../readiness/posterior.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, type Celsius } from '../units.ts';
import { roomOf, temperaturePath, type DoughBody } from './dough-path.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { beganIn, HORIZON, oddDoubt, readyMarks } from './window.ts';

/** The jar as it was last measured, else the room. */
const warmthOf = (seen: readonly Seen[], body: DoughBody): Celsius => {
  const last = seen
    .toSorted((a, b) => a.at - b.at)
    .findLast(({ reading }) => reading.what === 'levainTemperature')?.reading;
  return last && 'celsius' in last ? last.celsius : roomOf(body).at(-1)!.celsius;
};

/**
 * The levain's ready window in the kitchen, from its feed, and `until`: the end of what is usable
 * for a starter of the believed vigour. The jar drifts toward the kitchen as it was measured since the
 * feed; before it, the starter's own temperature was read.
 */
export function levainWait(input: WaitInput): Wait {
  const { recipe, entered, prior, kitchen } = input;
  // Not yet leads back here with a new entry; the feed, some minutes before, is when it began.
  const begin = input.again
    ? beganIn(entered, ['levain.feed', 'levain.ripening', 'levain.look'], input.now)
    : input.now;
  const ripe = ripeGrowth(seedShare(recipe.formula.levain));
  const fed = input.fedAt ?? entered['levain.ripening'] ?? begin;
  const ofJar = ({ at, reading }: Seen): boolean =>
    reading.what === 'levainTemperature' && at >= fed;
  const seen = input.seen.filter((one) => one.reading.what === 'kitchenTemperature' || ofJar(one));
  const of = 'levainTemperature' as const;
  const body = { kitchen, seen, begin, hours: HORIZON, tau: TAU.jar, of };
  const path = temperaturePath(body);
  const posterior = openPosterior(prior);
  const { marks, doubt } = readyMarks(
    begin,
    {
      ...input,
      seen,
      posterior,
      doubt: saneCelsius(warmthOf(seen, body)).doubt ?? oddDoubt(seen, [of]),
    },
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
