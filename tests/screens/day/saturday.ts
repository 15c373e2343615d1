import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { plan } from '../../../src/core/day/plan.ts';
import { expandFormula } from '../../../src/core/day/plan/expand.ts';
import type { Batch, PlanInput } from '../../../src/core/day/plan/types.ts';
import { expandWeekly } from '../../../src/core/day/plan/wall-clock.ts';
import { DAY, HOUR } from '../../../src/core/units.ts';
import type { DayShown, ReadDay } from '../../../src/screens/day/day-shown.ts';

/** A Thursday, half past five in the evening. */
export const THURSDAY = Date.UTC(2026, 2, 5, 17, 30);
export const SATURDAY_NOON = Date.UTC(2026, 2, 7, 12);

export const READ: ReadDay = {
  hour: (at) => new Date(at).toISOString().slice(11, 16),
  day: (at) => new Date(at).toLocaleDateString('en-GB', { weekday: 'short', timeZone: 'UTC' }),
  midnight: (at) => Math.floor(at / DAY) * DAY,
  mark: () => null,
  stays: () => false,
};

/** A plan for Saturday noon as it is shown, asked for on Thursday evening at 22 °C. */
export function saturday(
  ...breads: readonly {
    readonly formula: Formula;
    readonly loaves: number;
    readonly due?: number;
  }[]
): DayShown {
  const kitchen = { fridgePlaces: 12, bowls: 6, pots: 2, temperatureC: 22 };
  const batches = breads.map(({ formula, loaves, due = SATURDAY_NOON }): Batch => {
    const { recipe } = makeRecipe(formula, { loaves, piece: formula.piece });
    return { name: formula.name, loaves, steps: expandFormula(recipe!, kitchen), due };
  });
  const asleep = {
    name: 'asleep',
    weekdays: [0, 1, 2, 3, 4, 5, 6],
    from: 22.5 * 60,
    to: 6.5 * 60,
  };
  const blocked = expandWeekly([asleep], {
    from: THURSDAY,
    to: SATURDAY_NOON + 6 * HOUR,
    zone: 'UTC',
  });
  const input: PlanInput = { planFrom: THURSDAY, blocked, ratherNot: [], kitchen, batches };
  const result = plan(input);
  if (result.fits !== true) throw new Error('Nothing fits.');
  return { touches: result.touches, ready: result.ready, batches, blocked };
}
