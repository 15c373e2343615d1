import { circleTold } from '../../core/speech/words/circle.ts';
import type { NotWritten } from '../house-circle.ts';
import type { House } from '../house.ts';

/** Whether a change was written; where it was not, that is told. */
export async function written(
  house: Pick<House, 'tell' | 'holds'>,
  deed: Promise<NotWritten | null>,
): Promise<boolean> {
  const why = await deed;
  if (why !== null)
    house.tell({ id: 'circle', text: circleTold[house.holds ? why : 'shows'], action: null });
  return why === null;
}
