import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { OwnWords } from '../../machines/ports.ts';
import { several } from '../core/speech/words/several.ts';
import { weighWords } from '../core/speech/words/weigh.ts';
import { fill } from '../core/speech/fill.ts';
import { shortName } from '../core/speech/short-name.ts';
import { inEnglish } from '../core/speech/tongue.ts';
import type { Formula } from '../core/formula/formula.ts';
import type { FormulaFound } from '../screens/house.ts';

export interface OwnParts {
  readonly kitchen: Pick<Kitchen, 'bakes'>;
  readonly formulas: readonly FormulaFound[];
  readonly readsOwn: boolean;
}

/** 'of plum jam', as a weighed line says it: the words behind its number. */
const weighed = (name: string): string =>
  fill(weighWords.filling.spoken, { grams: '', name }).trim();

const phrasesOf = ({ name, flours, fillings }: Formula): readonly string[] => [
  name,
  shortName(name),
  fill(several.said, { bake: shortName(name) }),
  ...[...flours, ...fillings].flatMap((one) => [one.name, weighed(one.name)]),
];

/**
 * What somebody wrote and the program may say: names of breads, flours and fillings, as they stand in
 * English sentences, for those are what clips are found by in every tongue.
 */
export const ownWords = ({ kitchen, formulas, readsOwn }: OwnParts): OwnWords => ({
  phrases: [
    ...new Set(
      inEnglish(() =>
        [
          ...Object.values(kitchen.bakes).map(({ context }) => context.recipe.formula),
          ...formulas.flatMap(({ formula }) => formula ?? []),
        ].flatMap(phrasesOf),
      ),
    ),
  ],
  aloud: readsOwn,
});
