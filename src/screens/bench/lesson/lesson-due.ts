import { lessonPages, type LessonPage } from '../../../core/lessons/lesson-pages.ts';
import type { BakeStage, OvenStage } from '../../../core/records/stage.ts';
import type { Ways } from '../../house.ts';
import type { BenchView } from '../view.ts';

/** Whether lessons are wanted, and which were met; left out, none are. */
export type Learner = Partial<Pick<Ways, 'learner' | 'met' | 'small'>>;

/**
 * The pages of the lesson that stands before this act: a learner's, of a step that was never met. None
 * before what is hot and calls, in the middle of a list, or in the place of a wait's task.
 */
export function lessonDue(
  { stage, task, call, progress }: Pick<BenchView, 'stage' | 'task' | 'call' | 'progress'>,
  { learner, met, small = 'off' }: Learner,
): readonly LessonPage[] {
  // A child's view has words of its own.
  if (learner !== 'on' || small !== 'off' || met?.includes(stage)) return [];
  if (task !== null || call === 'hot' || (progress?.done ?? 0) > 0) return [];
  return lessonPages(stage as BakeStage | OvenStage);
}
