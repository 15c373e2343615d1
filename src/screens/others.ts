import { deadlineOf } from '../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { metaOf, stageOf } from '../../machines/kitchen/stage-of.ts';
import { isLane } from '../core/records/lane.ts';
import { callsNow, several, waitsFor } from '../core/speech/words/several.ts';
import type { Instant } from '../core/units.ts';
import { bakeName } from './bake-name.ts';
import { bakeOf, focusOn } from './focus.ts';
import { benches } from './oven-left.ts';
import { nameIn } from './stage-names.ts';

/** A running bake, or one that left the oven hot, beside the one on show. */
export interface Other {
  readonly id: string;
  readonly mark: number;
  readonly name: string;
  /** What it waits for, in one or two words. */
  readonly waits: string;
  /** Its step's name. */
  readonly stage: string;
  /** When its wait ends, or since when it has called; null where its own hands are waited for. */
  readonly at: Instant | null;
  /** It has called and nothing was done yet. */
  readonly late: boolean;
}

const otherOf = (
  kitchen: Kitchen,
  id: string,
): Omit<Other, 'id' | 'mark' | 'name'> & { readonly hot: boolean } => {
  const { who, machine } = focusOn(kitchen, id)!;
  const at = stageOf(machine);
  const stage = nameIn(kitchen, who, at);
  const { call, waits } = metaOf(machine);
  const none = { stage, at: null, late: false, hot: false };
  // The oven is at another's loaf: this one's turn comes after.
  if ((who === 'oven' || isLane(who)) && bakeOf(kitchen, who) !== id)
    return { ...none, waits: several.ovenNext };
  if (call !== undefined && machine.context.byDue) {
    const since = machine.context.entered[at] ?? kitchen.now;
    return { stage, waits: callsNow[call], at: since, late: true, hot: call === 'hot' };
  }
  const deadline = deadlineOf(machine);
  return deadline === null
    ? { ...none, waits: several.yourTurn }
    : { ...none, waits: waitsFor[waits as keyof typeof waitsFor] ?? stage, at: deadline };
};

/**
 * All running bakes but the one on show: those that call first, hot before the rest and the oldest
 * before the newer, then those whose wait ends soonest, then those that wait for hands.
 */
export function othersOf(
  kitchen: Kitchen,
  shown: string | null,
  marks: Readonly<Record<string, number>>,
  hour: (at: Instant) => string,
): readonly Other[] {
  return benches(kitchen)
    .filter((id) => id !== shown)
    .map((id) => ({
      id,
      mark: marks[id] ?? 1,
      name: bakeName(kitchen, id, hour),
      ...otherOf(kitchen, id),
    }))
    .toSorted(
      (a, b) =>
        Number(b.hot) - Number(a.hot) ||
        Number(b.late) - Number(a.late) ||
        (a.at ?? Infinity) - (b.at ?? Infinity) ||
        a.mark - b.mark,
    )
    .map(({ hot: _, ...other }) => other);
}
