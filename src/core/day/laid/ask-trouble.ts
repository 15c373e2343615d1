import { bowlsFor } from '../../kitchen/bowls.ts';
import { whyNoPlan } from '../plan/expand.ts';
import type { FillingTrouble } from '../plan/perishable.ts';
import type { Instant } from '../../units.ts';
import { kitchenFor, type AskWorld } from './ask-world.ts';
import type { AskedBake, DayAsk } from './day-plan.ts';

/** Bakes in one ask at most: of more nothing is proven in the time there is. Judgement. */
export const MOST_BAKES = 3;

/**
 * Why an ask can have no plan, whatever the hour. `least` is what would do: loaves, bowls.
 */
export type AskTrouble =
  | { readonly key: 'noBakes' }
  | { readonly key: 'tooManyBakes'; readonly most: number }
  | { readonly key: 'sameName'; readonly bake: string }
  | { readonly key: 'noHour'; readonly bake: string }
  | {
      readonly key: 'reversed';
      readonly name: string;
      readonly from: Instant;
      readonly to: Instant;
    }
  | { readonly key: 'neverFree' }
  | {
      readonly key: 'fridgeShort';
      readonly bake: string;
      readonly needs: number;
      readonly has: number;
    }
  | {
      readonly key: 'bowlsShort';
      readonly bake: string;
      readonly needs: number;
      readonly has: number;
      /** Loaves that the bowls there are would take. */
      readonly loaves: number;
    }
  | { readonly key: 'filling'; readonly bake: string; readonly filling: FillingTrouble };

function bakeTroubles(ask: DayAsk, bake: AskedBake, { equipment }: AskWorld): AskTrouble[] {
  const { name, recipe, due, startAt } = bake;
  const found: AskTrouble[] = [];
  if (due === null && startAt === null) found.push({ key: 'noHour', bake: name });
  const kitchen = kitchenFor(ask, bake, equipment);
  if (recipe.process.retard > 0 && recipe.loaves > kitchen.fridgePlaces)
    found.push({
      key: 'fridgeShort',
      bake: name,
      needs: recipe.loaves,
      has: kitchen.fridgePlaces,
    });
  const bowls = bowlsFor(recipe.dough, equipment.bowls);
  if (bowls > kitchen.bowls) {
    const loaves = Math.floor((recipe.loaves * kitchen.bowls) / bowls);
    found.push({ key: 'bowlsShort', bake: name, needs: bowls, has: kitchen.bowls, loaves });
  }
  const filling = whyNoPlan(recipe, kitchen, ask.belief);
  if (filling) found.push({ key: 'filling', bake: name, filling });
  return found;
}

/** Everything about an ask that no hour would mend; empty where it may be planned. */
export function troublesOf(ask: DayAsk, world: AskWorld): readonly AskTrouble[] {
  const { bakes, away } = ask;
  if (bakes.length === 0) return [{ key: 'noBakes' }];
  if (bakes.length > MOST_BAKES) return [{ key: 'tooManyBakes', most: MOST_BAKES }];
  const names = bakes.map(({ name }) => name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  const reversed = away.filter(({ from, to }) => !(to > from));
  return [
    ...(twice === undefined ? [] : [{ key: 'sameName', bake: twice } as const]),
    ...reversed.map(({ name = '', from, to }) => ({ key: 'reversed', name, from, to }) as const),
    ...bakes.flatMap((bake) => bakeTroubles(ask, bake, world)),
  ];
}
