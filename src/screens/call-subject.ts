import { taskOf } from '../../machines/tasks.ts';
import type { Task } from '../core/records/task.ts';
import { callSubjects } from '../core/speech/words/calls.ts';
import { pots } from '../core/speech/words/names.ts';
import { tasks } from '../core/speech/words/tasks.ts';
import { fill } from '../core/speech/fill.ts';

/**
 * What a call of this stage, or of a task of its wait, is about; null where it has no such words. `pot` is
 * the one that calls, as sentences name it.
 */
export const subjectOf = (stage: string, pot: string = pots.pot): string | null => {
  const task = taskOf(stage);
  if (task !== null) return tasks[task as Task]?.subject ?? null;
  const subject = callSubjects[stage as keyof typeof callSubjects];
  return subject === undefined ? null : fill(subject, { pot });
};
