import type { BakeStage, OvenStage } from '../records/stage.ts';
import type { Sketch } from '../sketches/sketches.ts';
import { sketchOf } from '../sketches/of-stage.ts';
import { lessonPage } from '../speech/words/lesson-page.ts';
import { lessons, type Lesson } from '../speech/words/lessons.ts';
import { fill } from '../speech/fill.ts';

/** One page of a lesson: one picture, one thing to know. */
export interface LessonPage {
  readonly sketch: Sketch;
  /** What kind of page it is, above its title; null: why it is done. */
  readonly kind: string | null;
  readonly title: string;
  readonly text: string;
  /** Said as the page is turned to. */
  readonly spoken: string;
}

const why = (sketch: Sketch, { title, why: text }: Lesson): LessonPage => ({
  sketch,
  ...{ kind: null, title, text, spoken: `${title} ${text}` },
});

/** A thing with its name: a word of the trade, or a sign. */
const named = (
  sketch: Sketch,
  kind: string,
  { name, means }: { readonly name: string; readonly means: string },
): LessonPage => ({
  sketch,
  ...{ kind, title: name, text: means },
  spoken: fill(lessonPage.said, { word: name, means }),
});

/**
 * What a learner is told of a step before it is met for the first time: why, the new word, then each
 * sign by itself. Empty where there is nothing to tell.
 */
export function lessonPages(stage: BakeStage | OvenStage): readonly LessonPage[] {
  const lesson = lessons[stage];
  if (!lesson) return [];
  const sketch = sketchOf(stage, null);
  return [
    why(sketch, lesson),
    ...(lesson.word ? [named(sketch, lessonPage.newWord, lesson.word)] : []),
    ...Object.entries(lesson.signs ?? {}).map(([sign, words]) =>
      named(sign as Sketch, lessonPage.sign, words),
    ),
  ];
}
