import { doughByBalance, HALF_WETTED, waterAdvice } from '../heat/water.ts';
import { USUAL_LEVAIN } from '../heat/wanted.ts';
import { atMix, lastRead, type Known, type MixInput } from './mix-known.ts';
import type { StageWater } from './mix-water.ts';

/** The starter that a jar is fed: as cold as the fridge it was kept in, unless it was measured. */
export function seedOf(input: MixInput): Known {
  const read = lastRead(input, 'levainTemperature', input.entered['levain.feed'] ?? 0);
  return { celsius: read ?? input.recipe.process.fridge, read: read !== null };
}

/**
 * Water for a feed, so that the jar begins at the usual warmth of a levain. What doughs
 * taught of the heat of wetting is no lesson for a jar. Null where the feed has no water.
 */
export function feedWater(input: MixInput): StageWater | null {
  const { recipe } = input;
  const { feed } = recipe.lines;
  const of = (item: string) => feed.find((line) => line.item === item)?.grams ?? 0;
  const { hydration } = recipe.formula.levain;
  const at = atMix(input);
  const seedFlour = of('seed') / (1 + hydration);
  const flour = feed
    .filter(({ item }) => item.startsWith('flour'))
    .reduce((sum, { grams }) => sum + grams, 0);
  const mix = {
    wanted: USUAL_LEVAIN,
    flour: { grams: flour, celsius: at.flour.celsius },
    levain: { flour: seedFlour, water: of('seed') - seedFlour, celsius: seedOf(input).celsius },
    water: of('water'),
  };
  if (mix.water <= 0) return null;
  const advice = waterAdvice(mix, [], at.tap.celsius);
  const lands = doughByBalance(mix, advice.celsius, { hydration: HALF_WETTED });
  return { ...advice, grams: mix.water, wanted: USUAL_LEVAIN, lands };
}
