import type * as english from '../words/small-4-6.ts';
import type { InTongue } from '../tongue.ts';
import { small46Dough } from './small-4-6-dough.ts';
import { small46Oven } from './small-4-6-oven.ts';
import { small46Tasks } from './small-4-6-tasks.ts';

export const small46: InTongue<typeof english.small46> = {
  ...small46Dough,
  ...small46Oven,
  ...small46Tasks,
};
