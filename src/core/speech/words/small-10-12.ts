import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';
import { small1012Dough } from './small-10-12-dough.ts';
import { small1012Oven } from './small-10-12-oven.ts';
import { small1012Tasks } from './small-10-12-tasks.ts';

/** What a child of 10 to 12 is told at each step. A step without words does not compile. */
export const small1012: Readonly<Record<SmallStep, SmallWords>> = inTongue(
  'small-10-12',
  'small1012',
  {
    ...small1012Dough,
    ...small1012Oven,
    ...small1012Tasks,
  },
);
