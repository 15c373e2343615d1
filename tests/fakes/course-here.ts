import { course } from '../../src/app/course.ts';
import type { LaterCourse } from '../../src/app/later-course.ts';

/** Time's own course, as it is once it was fetched. */
export const COURSE_HERE: LaterCourse = {
  here: () => course,
  fetch: () => Promise.resolve(course),
};
