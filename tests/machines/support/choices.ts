import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { BAKE_STAGES } from '../../../src/core/records/stage.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { BAKE_CHART, itemsOf, LIST_AT, OVEN_CHART, waitsForFilling } from './chart.ts';
import { placesOf, recipeAt, type Model, type ModelBake, type Press } from './model.ts';
import { RECIPE, SCOOP, STONE, TIN } from './recipe.ts';

const TOUCHES = RECIPE.process.touches;
/** Fold or filling first, fold or filling last, and no touch at all; all of a filling in one press. */
export const RECIPES = [
  ...[TOUCHES, TOUCHES.slice(1), TOUCHES.slice(0, 2), []].map((touches) => ({
    ...RECIPE,
    process: { ...RECIPE.process, touches },
  })),
  { ...RECIPE, fillingAtOnce: true as const },
  STONE,
  TIN,
  SCOOP,
];

/** Stages a random bake begins at: all but the last two, which are ends. */
export const FROM = BAKE_STAGES.slice(0, -2);

export const pick = <T>(from: readonly T[], n: number): T | undefined => from[n % from.length];

/** What a right hand may do now, the ways onward more often than the others. */
export const rightPresses = (model: Model): Press[] =>
  placesOf(model).flatMap(([who, place]) => {
    const acts = Object.keys((who === 'oven' ? OVEN_CHART : BAKE_CHART)[place.stage] ?? {}).filter(
      (act) =>
        act !== 'due' &&
        !(act === 'loaded' && model.waiting.length === 0) &&
        !waitsForFilling(act, recipeAt(model, who), place.answers),
    );
    const presses = acts.flatMap((act): Press[] => {
      const times = /Over|Seen|Now$|pokeFlat|^rested|Rested|Done|ovenHot/.test(act) ? 1 : 4;
      const loaves = act === 'loaded' ? { loaves: model.waiting.slice(0, 1) } : {};
      return Array.from({ length: times }, () => ({ who, act, ...loaves }));
    });
    const asked = LIST_AT[place.stage];
    if (!asked) return presses;
    const items = itemsOf(asked.list, recipeAt(model, who));
    const open = items.find((item) => !(item in place.answers)) ?? items[0];
    const answers = open ? [{ who, act: 'answer', item: open, value: 'ready' }] : [];
    return [...presses, ...answers, ...(asked.next ? [...answers, ...answers, ...answers] : [])];
  });

/** A reading of any kind, plausible or not quite; temperatures, which steer, most often. */
export const readingOf = (b: number, c: number): Reading => {
  const celsius = 18 + (c % 12);
  return pick<Reading>(
    [
      { what: 'doughTemperature', celsius },
      { what: 'kitchenTemperature', celsius },
      { what: 'doughTemperature', celsius },
      { what: 'rise', percent: celsius * 3, of: c % 2 ? 'dough' : 'levain' },
      { what: 'doughTemperature', celsius: celsius + 40, odd: true },
      { what: 'weight', grams: 900 + celsius, of: pick(['dough', 'piece', 'loaf'] as const, c)! },
      { what: 'coreTemperature', celsius: celsius + 70 },
      { what: 'edge', edge: 'domed', bubbles: 'some' },
      { what: 'poke', dent: 'slow' },
      { what: 'crust', colour: 'golden' },
      { what: 'firstPiece', grams: 900 + celsius },
    ],
    b,
  )!;
};

/** A bake as it is joined: nothing answered, nothing measured. */
export const joinedAt = (stage: string, loaves: readonly string[], recipe: Recipe): ModelBake => ({
  stage,
  since: 0,
  deadline: null,
  byDue: false,
  answers: {},
  touches: 0,
  loaves,
  recipe,
  celsius: 24,
  ovenWanted: stage === 'proof.soon',
});
