import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';
import { small46Dough } from './small-4-6-dough.ts';
import { small46Oven } from './small-4-6-oven.ts';
import { small46Tasks } from './small-4-6-tasks.ts';

/** What a child of 4 to 6 is told at each step. A step without words does not compile. */
export const small46: Readonly<Record<SmallStep, SmallWords>> = inTongue('small-4-6', 'small46', {
  ...small46Dough,
  ...small46Oven,
  ...small46Tasks,
});
