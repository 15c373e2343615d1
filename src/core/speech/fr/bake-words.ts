import type * as english from '../words/bake-words.ts';
import type { InTongue } from '../tongue.ts';
import { bulk } from './bulk.ts';
import { cool } from './cool.ts';
import { levain } from './levain.ts';
import { mix } from './mix.ts';
import { proof } from './proof.ts';
import { read } from './read.ts';
import { shape } from './shape.ts';

export const bakeWords: InTongue<typeof english.bakeWords> = {
  ...read,
  ...levain,
  ...mix,
  ...bulk,
  ...shape,
  ...proof,
  ...cool,
};
