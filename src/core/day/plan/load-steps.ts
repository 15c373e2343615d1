import { limitsOf } from '../../formula/process-limits.ts';
import type { Recipe } from '../../formula/recipe.ts';
import type { Minutes } from '../../units.ts';
import { fives } from './dough-waits.ts';
import { perishableIn } from './perishable.ts';
import type { Kitchen, Step, Wait } from './types.ts';

/** Minutes of hands at the oven: to load, to lift lids, to take out. Practice. */
const HANDS: Minutes = 5;
/** Minutes of those five that the loaves already bake: a load is in after three, a lid off after one or two. */
const IN_AFTER = { load: 2, lid: 3.5 } as const;
/** The oven heats again after the last loaf is out. Practice. */
const AGAIN: Minutes = 5;
/** Bread that is cool keeps: no hurry with it for so long. Common practice, no source. */
const KEEPS: Minutes = 900;

const rigid = (minutes: Minutes): Wait => ({
  min: minutes,
  typicalFrom: minutes,
  typicalTo: minutes,
  max: minutes,
  weightShort: 0,
  weightLong: 0,
});

/** What the hands do between lidded and open baking; a tin has no lid. */
const BETWEEN = { pot: 'lid lift', stone: 'vent', tin: null } as const;

/** From the first load to the last, at the longest. */
export const firstToLast = (steps: readonly Step[]): Minutes =>
  steps
    .slice(
      0,
      steps.findLastIndex(({ name }) => name.startsWith('load ')),
    )
    .reduce((sum, { hands, wait }) => sum + hands + ('choices' in wait ? 0 : wait.max), 0);

/** Load after load through the oven; what waits meanwhile stays in the fridge. */
export function loadSteps(recipe: Recipe, { pots }: Kitchen, loads: number): Step[] {
  const { process, loaves } = recipe;
  const limits = limitsOf(process);
  const between = BETWEEN[process.vessel];
  const coolMost = Math.max(KEEPS, limits.cool?.most ?? 0);
  const cool: Wait = {
    min: Math.min(fives(process.cool), limits.cool?.least ?? 60),
    typicalFrom: fives(process.cool),
    typicalTo: Math.max(fives(process.cool), limits.cool?.most ?? 180),
    max: Math.max(coolMost, fives(process.cool)),
    weightShort: 4,
    weightLong: 4,
  };
  // A perishable loaf that waits counts its minutes: the oven's recovery is then not stretched.
  const usual = fives(process.recovery);
  const recovery: Wait = {
    min: Math.min(5, usual),
    typicalFrom: usual,
    typicalTo: usual,
    max: perishableIn(recipe) ? usual : Math.max(15, usual),
    weightShort: 3,
    weightLong: 2,
  };
  const under = between === null ? 0 : Math.max(5, fives(process.lidded - IN_AFTER.load));
  const open = fives(process.open - (between === null ? IN_AFTER.load : IN_AFTER.lid));
  return Array.from({ length: loads }, (_, i) => i + 1).flatMap((i): Step[] => {
    const cold = Math.max(0, loaves - pots * i);
    const fridge = cold > 0 ? { fridge: cold } : {};
    const uses = { oven: 1 as const, ...fridge };
    const lid: Step[] =
      between === null ? [] : [{ name: `${between} ${i}`, hands: HANDS, wait: rigid(open), uses }];
    return [
      { name: `load ${i}`, hands: HANDS, wait: rigid(between === null ? open : under), uses },
      ...lid,
      {
        name: `unload ${i}`,
        hands: HANDS,
        wait: i < loads ? recovery : cool,
        ovenAfter: AGAIN,
        ...(cold > 0 ? { uses: fridge } : {}),
      },
    ];
  });
}
