import { beforeOven, beforeStart } from './before.ts';
import { bulkSigns, crustSigns, levainSigns, loafSigns, pokeSigns, warmSigns } from './signs.ts';
import type { ListName, TickedList } from '../../records/stage.ts';
import type { Question } from '../words.ts';

/** The lists that are answered line by line; the other lists are ticked. */
export type QuestionList = Exclude<ListName, TickedList>;

/** Every line of every checklist, in the order it is asked. */
export const questions: Readonly<Record<QuestionList, readonly Question[]>> = {
  beforeStart,
  beforeOven,
  levainSigns,
  bulkSigns,
  loafSigns,
  pokeSigns,
  warmSigns,
  crustSigns,
};
