import { saltAndRye } from '../../../src/core/clock/salt-and-rye.ts';
import { temperatureIn } from '../../../src/core/clock/stretch.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { HOUR, type Celsius, type Instant } from '../../../src/core/units.ts';
import { DT, trueHours, trueRises } from '../../truth/synthetic.ts';

/** What a dough really is, which no machine is told. */
export interface DoughSecret {
  readonly lnV: number;
  /** As it came out of the first mix, and the room it stands in. */
  readonly from: Celsius;
  readonly room: Celsius;
}

/** A dough that rises, as it would be measured without any error. */
export interface TrueDough {
  readonly ready: Instant;
  celsius(at: Instant): Celsius;
  /** % of its volume. */
  percent(at: Instant): number;
}

/** Time constant of its bowl, h; the machines believe the same. */
const TAU = 5;

/**
 * The dough of a recipe that was mixed at `begin` and salted at `salted`: reckoned by the code of
 * the synthetic doughs, not by the machines' own. One that never rises is ready with its last hour.
 */
export function trueDough(
  { formula }: Recipe,
  { begin, salted }: { readonly begin: Instant; readonly salted: Instant },
  { lnV, from, room }: DoughSecret,
): TrueDough {
  const rye = formula.flours.reduce((sum, f) => sum + (f.grain === 'rye' ? f.pct / 100 : 0), 0);
  const rises = trueRises({
    p: formula.levain.pff,
    factor: saltAndRye(formula.salt, rye),
    salting: { hours: (salted - begin) / HOUR, unsalted: saltAndRye(0, rye) },
    ...{ from, toward: room, tau: TAU },
    truth: { v: Math.exp(lnV), q10: 2.8, held: 1, off: 0, jar: 1 },
  });
  const last = (rises.length - 1) * DT;
  const hours = (at: Instant): number => (at - begin) / HOUR;
  return {
    ready: begin + (trueHours(rises, formula.process.rise / 100) ?? last) * HOUR,
    celsius: (at) => temperatureIn({ from, toward: room, tau: TAU }, Math.max(0, hours(at))),
    percent: (at) =>
      100 * rises[Math.min(rises.length - 1, Math.max(0, Math.round(hours(at) / DT)))]!,
  };
}
