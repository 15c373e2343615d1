import type { TaskState } from '../src/core/records/position.ts';
import type { Instant } from '../src/core/units.ts';

/** A wait's marks carry its tasks beside its end: `lead.<task>` is when the task falls due. */
const LEAD = 'lead.';

type Marks = Readonly<Record<string, Instant>>;
type Tasks = Readonly<Record<string, TaskState>>;

/** The stage name of a task's call, and its mark. */
export const leadOf = (task: string): string => `${LEAD}${task}`;

/** The task of a mark or of a call's stage; null where it is none. */
export const taskOf = (mark: string): string | null =>
  mark.startsWith(LEAD) ? mark.slice(LEAD.length) : null;

/** Marks without the tasks: what a look keeps of the wait before it. */
export const withoutTasks = (marks: Marks): Marks =>
  Object.fromEntries(Object.entries(marks).filter(([mark]) => taskOf(mark) === null));

/** Going on closes what is open; what is done stays known. */
export const onlyDone = (tasks: Tasks): Tasks =>
  Object.fromEntries(
    Object.entries(tasks)
      .filter(([, { done }]) => done !== null)
      .map(([task, { done }]) => [task, { called: null, done }]),
  );

/** Names of the tasks that are done. */
export const doneTasks = (tasks: Tasks): string[] =>
  Object.keys(tasks).filter((task) => (tasks[task]?.done ?? null) !== null);

/** A task that a wait newly carries is open, though it was done in another wait before. */
const tasksJudged = (tasks: Tasks, before: Marks, marks: Marks): Tasks =>
  Object.fromEntries(
    Object.entries(tasks).filter(([task]) => !(leadOf(task) in marks) || leadOf(task) in before),
  );

interface Waiting {
  readonly marks: Marks;
  readonly tasks: Tasks;
}

/** What a wait is once the models have said its instants. */
export const waitJudged = (wait: Waiting, marks: Marks): Waiting => ({
  marks,
  tasks: tasksJudged(wait.tasks, wait.marks, marks),
});

/** Whether a wait carries a task that has not called yet. */
export const mayCall = (wait: Waiting, task: string): boolean =>
  isOpen(wait, task) && (wait.tasks[task]?.called ?? null) === null;

/** Whether a wait carries a task that is not done. */
export const isOpen = ({ marks, tasks }: Waiting, task: string): boolean =>
  leadOf(task) in marks && (tasks[task]?.done ?? null) === null;

export const taskCalled = (tasks: Tasks, task: string, at: Instant): Tasks => ({
  ...tasks,
  [task]: { called: at, done: null },
});

export const taskDone = (tasks: Tasks, task: string, at: Instant): Tasks => ({
  ...tasks,
  [task]: { called: tasks[task]?.called ?? null, done: at },
});

/** Done elsewhere: it is not asked again, and nothing of it is to be called here. */
export const taskKept = (tasks: Tasks, task: string, at: Instant): Tasks => ({
  ...tasks,
  [task]: { called: null, done: at },
});
