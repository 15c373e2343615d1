import { createEffect, createSignal, on, onCleanup, type JSX } from 'solid-js';
import { lessonPages } from '../../core/lessons/lesson-pages.ts';
import type { BakeStage, OvenStage } from '../../core/records/stage.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { lessonPage } from '../../core/speech/words/lesson-page.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { Sketch } from '../../parts/Sketch.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import type { House } from '../house.ts';
import './lesson/LessonFaces.css';

/** A step's lesson once more, for whoever asks: page by page, each said as it is turned to. None is met by it. */
export default function LessonSheet(props: {
  readonly house: House;
  readonly stage: BakeStage | OvenStage;
  readonly onClose: () => void;
}): JSX.Element {
  // As it was asked for: a step that time ends turns no page under a finger.
  // eslint-disable-next-line solid/reactivity -- read once
  const pages = lessonPages(props.stage);
  const [at, setAt] = createSignal(0);
  const page = () => pages[at()]!;
  const isLast = (): boolean => at() + 1 === pages.length;
  const say = (): void => props.house.say(page().spoken);
  createEffect(on(at, say));
  onCleanup(() => props.house.say(''));
  return (
    <Sheet title={page().title}>
      <div class="lesson">
        <Sketch name={page().sketch} />
        <div>
          <p class="act-place">{page().kind ?? lessonPage.label}</p>
          <p class="act-detail">{unbroken(page().text)}</p>
        </div>
      </div>
      <div class="sheet-grid">
        <Control label={controls.backToBench} onPress={() => props.onClose()} />
        <Control
          label={lessonPage.next}
          value={fill(lessonPage.of, { n: at() + 1, count: pages.length })}
          fresh={`next ${at()}`}
          disabled={isLast()}
          onPress={() => setAt(at() + 1)}
        />
        <Control
          label={lessonPage.back}
          fresh={`back ${at()}`}
          disabled={at() === 0}
          onPress={() => setAt(at() - 1)}
        />
        <Control label={controls.sayAgain} does="sayAgain" onPress={say} />
      </div>
    </Sheet>
  );
}
