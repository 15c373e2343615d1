import { HEADS_UP } from '../../src/core/records/task.ts';
import type { Instant } from '../../src/core/units.ts';
import { isOpen, taskOf } from '../tasks.ts';
import type { BakeSnapshot, LaneSnapshot, OvenSnapshot } from './kitchen.ts';
import { metaOf, stageOf } from './stage-of.ts';

/** A task of the present wait that is not done. `called`: null until it fell due. */
export interface OpenTask {
  readonly task: string;
  readonly at: Instant;
  readonly called: Instant | null;
  /** Whether it calls: it fell due while the baker was elsewhere, not at the press that began the wait. */
  readonly calls: boolean;
}

/** The open tasks of a machine that waits, the first due first. */
export const openTasks = (
  machine: BakeSnapshot | OvenSnapshot | LaneSnapshot,
): readonly OpenTask[] => {
  if (metaOf(machine).waits === undefined) return [];
  const { context } = machine;
  const since = context.entered[stageOf(machine)] ?? 0;
  return Object.entries(context.marks)
    .flatMap(([mark, at]): OpenTask[] => {
      const task = taskOf(mark);
      if (task === null || !isOpen(context, task)) return [];
      const called = context.tasks[task]?.called ?? null;
      const calls = called !== null && called > since && task !== HEADS_UP;
      return [{ task, at, called, calls }];
    })
    .toSorted((a, b) => a.at - b.at || (a.task < b.task ? -1 : 1));
};
