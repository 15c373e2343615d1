import { bulk } from './bulk.ts';
import { cool } from './cool.ts';
import { levain } from './levain.ts';
import { mix } from './mix.ts';
import { proof } from './proof.ts';
import { read } from './read.ts';
import { shape } from './shape.ts';
import type { BakeStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

/** What every stage of a bake says. A stage without words does not compile. */
export const bakeWords: Readonly<Record<BakeStage, StageWords>> = {
  ...read,
  ...levain,
  ...mix,
  ...bulk,
  ...shape,
  ...proof,
  ...cool,
};
