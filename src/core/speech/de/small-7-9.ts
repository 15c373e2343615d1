import type * as english from '../words/small-7-9.ts';
import type { InTongue } from '../tongue.ts';
import { small79Dough } from './small-7-9-dough.ts';
import { small79Oven } from './small-7-9-oven.ts';
import { small79Tasks } from './small-7-9-tasks.ts';

export const small79: InTongue<typeof english.small79> = {
  ...small79Dough,
  ...small79Oven,
  ...small79Tasks,
};
