import type * as english from '../words/questions.ts';
import type { InTongue } from '../tongue.ts';
import { beforeOven, beforeStart } from './before.ts';
import { bulkSigns, crustSigns, levainSigns, loafSigns, pokeSigns, warmSigns } from './signs.ts';

export const questions: InTongue<typeof english.questions> = {
  beforeStart,
  beforeOven,
  levainSigns,
  bulkSigns,
  loafSigns,
  pokeSigns,
  warmSigns,
  crustSigns,
};
