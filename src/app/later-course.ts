import type { Course } from './course.ts';

/** Time's own course, wanted only where something happened: an empty kitchen is shown without it. */
export interface LaterCourse {
  /** Null until it was fetched; nothing is due before the first fact, and that waits for it. */
  here(): Course | null;
  fetch(): Promise<Course>;
}

/** @param begun whether the log has a row: then it is here before the kitchen is shown */
export async function makeCourse(begun: boolean): Promise<LaterCourse> {
  let here: Course | null = null;
  const fetch = async (): Promise<Course> => (here ??= (await import('./course.ts')).course);
  if (begun) await fetch();
  return { here: () => here, fetch };
}
