import { readingsOfLook, type Seen } from '../records/seen.ts';
import type { BakeRows } from './bake-rows.ts';

/**
 * What the looks of a bake answered, as readings, each look at the press that left it: a rise told by picture
 * is among these and in no reading of its own.
 *
 * @returns in the order they were left; [] where no look asked anything
 */
export function bakeLooks({
  start,
  standing,
}: Pick<BakeRows, 'start' | 'standing'>): readonly Seen[] {
  const seen: Seen[] = [];
  let answers: Readonly<Record<string, string>> = {};
  for (const fact of standing) {
    if (fact.kind !== 'press' || fact.who !== start.bake || fact.act === 'taskDone') continue;
    if (fact.act === 'answer') {
      answers = { ...answers, [fact.item ?? '']: fact.value ?? '' };
      continue;
    }
    const { at } = fact;
    seen.push(...readingsOfLook(answers).map((reading) => ({ at, reading })));
    answers = {};
  }
  return seen;
}
