import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { metaOf, stageOf } from '../../machines/kitchen/stage-of.ts';
import type { Task } from '../core/records/task.ts';
import type { Instant } from '../core/units.ts';
import { BEFORE_CALL, callsAt } from './calls-soon.ts';

/** What a gate stands before. */
const GATED: ReadonlySet<string> = new Set(['hot', 'blade', 'machine']);

/** Tasks of free hands at a hot tray, a boiling pot or a blade. */
const HOT_TASKS: ReadonlySet<string> = new Set<Task>(['toast', 'kettle', 'cut']);

/** One of them was asked for and is not done: somebody may be at it. */
const isAtHotTask = (machine: Parameters<typeof openTasks>[0]): boolean =>
  openTasks(machine).some(({ task, called }) => called !== null && HOT_TASKS.has(task));

/** Nothing is hot, and nothing calls or is about to: the tablet may listen. */
export function mayRecord(kitchen: Kitchen, now: Instant): boolean {
  const isHot =
    stageOf(kitchen.oven) !== 'off' ||
    Object.values(kitchen.timers).some(({ call }) => call === 'hot') ||
    [kitchen.oven, ...Object.values(kitchen.bakes)].some(isAtHotTask) ||
    Object.values(kitchen.bakes).some((bake) => GATED.has(metaOf(bake).hazard ?? 'none'));
  if (isHot) return false;
  const call = callsAt(kitchen);
  return call === null || call - now > BEFORE_CALL;
}
