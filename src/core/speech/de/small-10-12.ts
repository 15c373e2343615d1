import type * as english from '../words/small-10-12.ts';
import type { InTongue } from '../tongue.ts';
import { small1012Dough } from './small-10-12-dough.ts';
import { small1012Oven } from './small-10-12-oven.ts';
import { small1012Tasks } from './small-10-12-tasks.ts';

export const small1012: InTongue<typeof english.small1012> = {
  ...small1012Dough,
  ...small1012Oven,
  ...small1012Tasks,
};
