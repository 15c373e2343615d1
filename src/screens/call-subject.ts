import { taskOf } from '../../machines/tasks.ts';
import type { Task } from '../core/records/task.ts';
import { callSubjects } from '../core/speech/en/calls.ts';
import { tasks } from '../core/speech/en/tasks.ts';

/** What a call of this stage, or of a task of its wait, is about; null where it has no such words. */
export const subjectOf = (stage: string): string | null => {
  const task = taskOf(stage);
  if (task !== null) return tasks[task as Task]?.subject ?? null;
  return callSubjects[stage as keyof typeof callSubjects] ?? null;
};
