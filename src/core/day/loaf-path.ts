import { doughClock } from '../clock/dough-clock.ts';
import { temperatureAt, type Path } from '../clock/stretch.ts';
import { driftPath, fitDrift, type Measured } from '../heat/drift.ts';
import { loafTau } from '../heat/loaf-tau.ts';
import { HOUR, type Celsius, type Hours, type Instant } from '../units.ts';
import { cut, roomOf, temperaturePath } from './dough-path.ts';
import type { WaitInput } from './waits.ts';
import { HORIZON } from './window.ts';

/** Time constant of a shaped loaf in the room, h. Common practice, no source. */
const LOAF_TAU: Hours = 4;
/** A probe in the core tells how warm the whole loaf was so long ago, h. Common practice, no source. */
const CORE_LAG: Hours = 1.2;

/** What a probe in the core showed while the loaf was in the cold, as of the loaf as a whole. */
const coreIn = ({ seen }: WaitInput, from: Instant, until: Instant): Measured[] =>
  seen.flatMap(({ at, reading }) => {
    const hours = (at - from) / HOUR - CORE_LAG;
    return reading.what === 'coreTemperature' && hours > 0 && at <= until
      ? { hours, celsius: reading.celsius }
      : [];
  });

/**
 * Temperature of a shaped loaf from the end of its bulk: in the room; from `chilled` on toward the
 * fridge, the drift fitted to a probe in its core; from `takenOut` on toward the room again, with the
 * time constant of its mass.
 */
export function loafPath(
  input: WaitInput,
  { begin, celsius }: { readonly begin: Instant; readonly celsius: Celsius },
): Path {
  const { kitchen, seen, recipe, chilled, takenOut } = input;
  const { salted } = doughClock(recipe.formula);
  const factored = (path: Path): Path => path.map((one) => ({ ...one, factor: salted }));
  const room = { kitchen, seen, begin, hours: HORIZON, tau: LOAF_TAU, start: celsius };
  if (chilled === undefined) return factored(temperaturePath(room));
  const tau = loafTau(recipe.piece);
  const warm = Math.max(0, chilled - begin) / HOUR;
  const first = warm > 0 ? cut(temperaturePath(room), warm) : [];
  const goesIn = first.length > 0 ? temperatureAt(first, warm) : celsius;
  const air = [{ hours: 0, celsius: recipe.process.fridge }];
  const core = coreIn(input, chilled, takenOut ?? Infinity);
  const cold = driftPath(fitDrift(core, air, { tau, start: goesIn }), air, HORIZON);
  if (takenOut === undefined) return factored([...first, ...cold]);
  const stood = Math.max(0, takenOut - chilled) / HOUR;
  const out = { from: temperatureAt(cold, stood), tau, offset: 0 };
  const again = driftPath(out, roomOf({ ...room, begin: takenOut }), HORIZON);
  return factored([...first, ...cut(cold, stood), ...again]);
}
