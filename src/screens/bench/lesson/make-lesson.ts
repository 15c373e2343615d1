import { createEffect, createMemo, createSignal, on, type Accessor } from 'solid-js';
import { samePlain } from '../../../../machines/kitchen/same-plain.ts';
import type { LessonPage } from '../../../core/lessons/lesson-pages.ts';
import type { House } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { lessonDue } from './lesson-due.ts';

/** A lesson as it is turned through. */
export interface Lesson {
  /** The page that is shown, and which of how many; null: no lesson stands here. */
  readonly shown: Accessor<{
    readonly page: LessonPage;
    readonly n: number;
    readonly count: number;
  } | null>;
  /** On to the next page; behind the last one the lesson was met. */
  next(): void;
  back(): void;
  say(): void;
  /** No lessons any more. */
  leave(): void;
}

/** The lesson of the act at hand, for a learner who has not met it; each page is said as it is turned to. */
export function makeLesson(
  house: House,
  view: Accessor<BenchView | null>,
  rings: Accessor<boolean>,
): Lesson {
  const [at, setAt] = createSignal(0);
  const pages = createMemo<readonly LessonPage[]>(
    () => {
      const shown = view();
      return shown === null || rings() ? [] : lessonDue(shown, house.ways());
    },
    [],
    { equals: samePlain },
  );
  const shown: Lesson['shown'] = () => {
    const page = pages()[at()];
    return page ? { page, n: at() + 1, count: pages().length } : null;
  };
  const say = (): void => {
    const page = pages()[at()];
    if (page) house.say(page.spoken);
  };
  createEffect(on(pages, () => setAt(0), { defer: true }));
  // The first page is said as its step is entered, in place of the act: app/speak-of.ts.
  createEffect(on(at, say, { defer: true }));
  return {
    shown,
    next() {
      if (at() + 1 < pages().length) return void setAt(at() + 1);
      const { stage } = view()!;
      house.choose({ met: [...house.ways().met, stage] });
      // The words of the act were not heard for its lesson.
      house.say(view()!.spoken);
    },
    back: () => setAt(Math.max(0, at() - 1)),
    say,
    leave: () => house.choose({ learner: 'off' }),
  };
}
