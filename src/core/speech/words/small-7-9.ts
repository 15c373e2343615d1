import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';
import { small79Dough } from './small-7-9-dough.ts';
import { small79Oven } from './small-7-9-oven.ts';
import { small79Tasks } from './small-7-9-tasks.ts';

/** What a child of 7 to 9 is told at each step. A step without words does not compile. */
export const small79: Readonly<Record<SmallStep, SmallWords>> = inTongue('small-7-9', 'small79', {
  ...small79Dough,
  ...small79Oven,
  ...small79Tasks,
});
