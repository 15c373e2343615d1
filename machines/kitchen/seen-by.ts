import type { Fact } from '../../src/core/records/fact.ts';
import { readingsOfLook, type Seen } from '../../src/core/records/seen.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { standingReadings } from './standing-readings.ts';

/** What the looks of a bake answered, each look once it was left by a press. */
const looked = (standing: readonly Fact[], bake: string): Seen[] => {
  const seen: Seen[] = [];
  let answers: Record<string, string> = {};
  for (const fact of standing) {
    if (fact.kind !== 'press' || fact.who !== bake) continue;
    if (fact.act === 'answer') {
      answers = { ...answers, [fact.item ?? '']: fact.value ?? '' };
    } else if (fact.act !== 'taskDone') {
      seen.push(...readingsOfLook(answers).map((reading) => ({ at: fact.at, reading })));
      answers = {};
    }
  }
  return seen;
};

/**
 * Everything that stands of what was seen of a bake: its readings, its looks' answers, and the last
 * reading of each kind from before a jump, which no fact of this fold holds.
 */
export const seenBy = (kitchen: Kitchen, { context }: BakeSnapshot): Seen[] => {
  const standing = standingReadings(kitchen, context.id);
  const before = Object.values(context.readings).filter(
    ({ at }) => !standing.some((one) => one.at === at),
  );
  return [...before, ...standing, ...looked(kitchen.standing, context.id)].map(
    ({ at, reading }) => ({ at, reading }),
  );
};
