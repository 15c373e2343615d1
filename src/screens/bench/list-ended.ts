import type { LastAnswer } from '../../../machines/kitchen/step.ts';
import { isChecklist } from '../../core/records/checklists.ts';
import type { ListName } from '../../core/records/stage.ts';
import { heed, heedLines } from '../../core/speech/words/heed.ts';

/** What to mend about an answer, or null. */
export const heedOf = (list: ListName, item: string, value: string | undefined): string | null => {
  const items: Readonly<Record<string, Readonly<Record<string, string>>>> | undefined =
    heed[list as keyof typeof heed];
  return (value !== undefined && items?.[item]?.[value]) || null;
};

/** What is said of a list that was left by its last answer: what that asks to heed, and its end. */
export const listEnded = ({ list, item, value }: LastAnswer): string | null =>
  isChecklist(list)
    ? [heedOf(list, item, value), heedLines.listComplete].filter(Boolean).join(' ')
    : null;
