import { Show, type JSX } from 'solid-js';
import { controls } from '../../../core/speech/words/controls.ts';
import { lessonPage } from '../../../core/speech/words/lesson-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sketch } from '../../../parts/Sketch.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { Lesson } from './make-lesson.ts';
import './LessonFaces.css';

export { makeLesson } from './make-lesson.ts';

/** One page of a lesson: a picture, what kind of page it is, its title, and one thing to know. */
export function LessonWords(props: { readonly lesson: Lesson }): JSX.Element {
  return (
    <Show when={props.lesson.shown()}>
      {(shown) => (
        <div class="lesson">
          <div class="lesson-picture">
            <Sketch name={shown().page.sketch} />
          </div>
          <Words
            headline={shown().page.title}
            detail={shown().page.text}
            picture={<p class="act-place">{shown().page.kind ?? lessonPage.label}</p>}
          />
        </div>
      )}
    </Show>
  );
}

export function LessonSlab(props: {
  readonly lesson: Lesson;
  readonly fresh: unknown;
}): JSX.Element {
  const last = (): boolean => {
    const shown = props.lesson.shown();
    return shown === null || shown.n === shown.count;
  };
  const place = () => {
    const { n, count } = props.lesson.shown() ?? { n: 1, count: 1 };
    return { n, count };
  };
  return (
    <Slab
      label={last() ? lessonPage.toAct : lessonPage.next}
      then={fill(lessonPage.of, place())}
      fresh={`${props.fresh} ${props.lesson.shown()?.n}`}
      onPress={() => props.lesson.next()}
    />
  );
}

export function LessonControls(props: { readonly lesson: Lesson }): JSX.Element {
  return (
    <>
      <Control
        label={lessonPage.back}
        disabled={(props.lesson.shown()?.n ?? 1) === 1}
        onPress={() => props.lesson.back()}
      />
      <Control label={controls.sayAgain} does="sayAgain" onPress={() => props.lesson.say()} />
      <Control label={lessonPage.leave} onPress={() => props.lesson.leave()} />
    </>
  );
}
