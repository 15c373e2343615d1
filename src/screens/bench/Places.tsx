import { lazy, Match, Switch, type JSX } from 'solid-js';
import { ActControls, ActSlab } from './ActFace.tsx';
import { ActWords } from './ActWords.tsx';
import type { BenchProps } from './Bench.tsx';
import type { Lesson } from './lesson/make-lesson.ts';
import type { NumberPage, ReadingPage } from './readings/page.ts';
import type { BenchView } from './view.ts';

export const gate = () => import('./GateFace.tsx');
const GateWords = lazy(() => gate().then((m) => ({ default: m.GateWords })));
const GateSlab = lazy(() => gate().then((m) => ({ default: m.GateSlab })));
const GateControls = lazy(() => gate().then((m) => ({ default: m.GateControls })));
export const keypad = () => import('./readings/NumberFace.tsx');
const NumberWords = lazy(() => keypad().then((m) => ({ default: m.NumberWords })));
const NumberSlab = lazy(() => keypad().then((m) => ({ default: m.NumberSlab })));
const NumberControls = lazy(() => keypad().then((m) => ({ default: m.NumberControls })));
export const lessons = () => import('./lesson/LessonFaces.tsx');
const LessonWords = lazy(() => lessons().then((m) => ({ default: m.LessonWords })));
const LessonSlab = lazy(() => lessons().then((m) => ({ default: m.LessonSlab })));
const LessonControls = lazy(() => lessons().then((m) => ({ default: m.LessonControls })));

/** What stands on the bench: a keypad, what a learner is told before a step, a gate, or the act itself. */
export type Mode = 'pad' | 'lesson' | 'gate' | 'act';

export interface PlaceProps extends BenchProps {
  readonly view: BenchView;
  readonly mode: Mode;
  /** What the keypad is about, while it stands there. */
  readonly taking: {
    readonly house: BenchProps['house'];
    readonly bake: string;
    readonly act: string;
    readonly page: NumberPage;
    readonly onTurn: (page: ReadingPage | null) => void;
  };
  readonly lesson: Lesson | undefined;
  readonly ringing: boolean;
  /** Whether the running time stands above. */
  readonly timed: boolean;
  /** The bake's mark, where more than one runs. */
  readonly mark: number | undefined;
  /** When it changes, it is another act. */
  readonly fresh: unknown;
  readonly onRead: (page: ReadingPage | null) => void;
  /** The gate was opened. */
  readonly onOpen: () => void;
}

export function WordsPlace(props: PlaceProps): JSX.Element {
  return (
    <Switch fallback={<ActWords {...props} onAhead={() => props.onRead({ at: 'ahead' })} />}>
      <Match when={props.mode === 'pad'}>
        <NumberWords {...props.taking} />
      </Match>
      <Match when={props.mode === 'lesson' && props.lesson}>
        {(lesson) => <LessonWords lesson={lesson()} />}
      </Match>
      <Match when={props.mode === 'gate'}>
        <GateWords house={props.house} view={props.view} mark={props.mark} />
      </Match>
    </Switch>
  );
}

export function SlabPlace(props: PlaceProps): JSX.Element {
  return (
    <Switch fallback={<ActSlab {...props} />}>
      <Match when={props.mode === 'pad'}>
        <NumberSlab {...props.taking} />
      </Match>
      <Match when={props.mode === 'lesson' && props.lesson}>
        {(lesson) => <LessonSlab lesson={lesson()} fresh={props.fresh} />}
      </Match>
      <Match when={props.mode === 'gate'}>
        <GateSlab view={props.view} onOpen={() => props.onOpen()} />
      </Match>
    </Switch>
  );
}

export function ControlsPlace(props: PlaceProps): JSX.Element {
  return (
    <Switch fallback={<ActControls {...props} />}>
      <Match when={props.mode === 'pad'}>
        <NumberControls {...props.taking} />
      </Match>
      <Match when={props.mode === 'lesson' && props.lesson}>
        {(lesson) => <LessonControls lesson={lesson()} />}
      </Match>
      <Match when={props.mode === 'gate'}>
        <GateControls {...props} />
      </Match>
    </Switch>
  );
}
