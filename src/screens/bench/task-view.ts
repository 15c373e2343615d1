import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { openTasks } from '../../../machines/kitchen/open-tasks.ts';
import { prepareOf } from '../../core/formula/prepare-of.ts';
import type { Recipe } from '../../core/formula/recipe.ts';
import { asksRise, TASKS, type Task } from '../../core/records/task.ts';
import { fetchLoad, taskPress, tasks, tasksLines } from '../../core/speech/words/tasks.ts';
import type { Instant } from '../../core/units.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { Focus } from '../focus.ts';
import { nextLoad } from './next-load.ts';
import type { Asked, Press } from './view.ts';

/** What keeps once it is done. A wet bench dries, water cools, flour goes damp, a loaf warms: these wait for their call. Judgement. */
const KEEPS = (task: Task): boolean => !['bench', 'kettle', 'coat', 'fetch'].includes(task);

/** More at once would not be read beside a running time. */
const MOST_TILES = 2;

/** A wait's tasks that are open, by those this program has words for. */
const open = ({ machine }: Focus) =>
  openTasks(machine).flatMap(({ task, ...state }) => {
    const known = TASKS.find((one) => one === task);
    return known === undefined ? [] : [{ task: known, ...state }];
  });

const done = (who: string, task: Task, value?: string): Press['deed'] => ({
  kind: 'press',
  who,
  act: 'taskDone',
  item: task,
  ...(value === undefined ? {} : { value }),
});

/** What may not stand long is made ready like the rest, but waits where it is cold. */
const careOf = ({ formula }: Recipe, task: Task): string | null => {
  const spoils = formula.fillings.some(
    (filling) => filling.keeps === 'perishable' && prepareOf(filling).some((how) => how === task),
  );
  return [tasks[task].care, spoils && tasksLines.spoilsToo].filter(Boolean).join(' ') || null;
};

/** A task's own act on the bench, and since when it has called. */
export interface TaskAct extends Asked {
  readonly task: Task;
  readonly since: Instant;
  readonly spoken: string;
}

/** The task that calls, as an act of its own while the wait goes on; the first due first. Null: none. */
export function taskView(kitchen: Kitchen, focus: Focus, equipment: Equipment): TaskAct | null {
  const first = open(focus).find(({ calls }) => calls);
  if (first === undefined) return null;
  const { task, called, at } = first;
  const words = tasks[task];
  const together = task === 'fetch' && focus.bake.context.recipe.process.vessel !== 'pot';
  const { headline } = together ? fetchLoad : words;
  const said = together ? fetchLoad.spoken : headline;
  const { waiting } = kitchen.oven.context;
  const last = task === 'fetch' && waiting.length <= nextLoad(kitchen, equipment).length;
  return {
    task,
    since: called ?? at,
    headline,
    detail: last ? tasksLines.fetchLast : words.detail,
    care: careOf(focus.bake.context.recipe, task),
    spoken: last ? `${said}.` : `${said}. ${words.detail}`,
    // What is asked is answered by a reading, which closes it.
    slab: asksRise(task)
      ? { label: words.done, then: taskPress.byPicture, deed: null }
      : { label: words.done, then: taskPress.then, deed: done(focus.who, task) },
    tiles: [{ label: taskPress.leave, deed: done(focus.who, task, 'left') }],
    lines: [],
  };
}

/** A task that will call later in this wait, and may be done now. */
export interface Ahead {
  readonly task: Task;
  /** When it calls. */
  readonly at: Instant;
  readonly deed: Press['deed'];
}

/** What this wait will yet call for and that may be done before, the first to call first. */
export const aheadOf = (focus: Focus): readonly Ahead[] =>
  open(focus)
    .filter(({ task, called }) => called === null && !asksRise(task) && KEEPS(task))
    .map(({ task, at }) => ({ task, at, deed: done(focus.who, task) }));

/** What a wait asked for as it began, each done by one press beside the wait's own. */
export const taskTiles = (focus: Focus): readonly Press[] =>
  open(focus)
    .filter(({ called, calls }) => called !== null && !calls)
    .slice(0, MOST_TILES)
    .map(({ task }) => ({ label: tasks[task].done, deed: done(focus.who, task) }));
