import {
  createMemo,
  createResource,
  createSignal,
  lazy,
  onMount,
  Show,
  Suspense,
  type Accessor,
  type JSX,
} from 'solid-js';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { Caption } from '../../parts/Caption.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import { bench } from '../../core/speech/words/bench.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { fill } from '../../core/speech/fill.ts';
import { HOUR, MINUTE, type Instant } from '../../core/units.ts';
import type { House } from '../house.ts';
import { ActTimes } from './ActTimes.tsx';
import { BenchEar } from './BenchEar.tsx';
import { TargetFace } from './TargetFace.tsx';
import { faceOf, hasGate } from './small/face-of.ts';
import { bakeOf, focusOn } from '../focus.ts';
import type { NumberPage, ReadingPage } from './readings/page.ts';
import {
  ControlsPlace,
  gate,
  keypad,
  lessons,
  SlabPlace,
  WordsPlace,
  type Mode,
} from './Places.tsx';
import { sayNext } from './say-next.ts';
import { isLong, stepsOf, tickOf } from './steps.ts';
import { makeBeside } from './beside.ts';
import { keepHalfTaken } from './half-taken.ts';
import { OtherBakes } from '../OtherBakes.tsx';
import { nameIn } from '../stage-names.ts';
import { asksList, benchView, type BenchView } from './view.ts';

const MoreSheet = lazy(() => import('./MoreSheet.tsx'));
const OverFace = lazy(() => import('./OverFace.tsx'));
const ReturnFace = lazy(() => import('./ReturnFace.tsx'));
const ReadingSheets = lazy(() => import('./readings/ReadingSheets.tsx'));

export interface BenchProps {
  readonly house: House;
  readonly bake: string;
  readonly onHome: () => void;
  readonly onBake: (id: string) => void;
  readonly onKitchen: () => void;
  readonly onDay: () => void;
}

/** Walks one bake: one act, its time, one big press. */
export default function Bench(props: BenchProps): JSX.Element {
  const house = props.house;
  // The checklists' words, the gate and the keypad come right after the first paint.
  const [questions] = createResource(() => import('./question-view.ts'));
  const [measured] = createResource(() => import('./measured-view.ts'));
  onMount(() => void Promise.all([gate(), keypad(), import('./ReturnFace.tsx')]));
  const focus = createMemo(() => focusOn(house.kitchen(), props.bake));
  // How long something was left is told by the hour; the view is not made anew every second.
  const hourNow = createMemo(() => Math.floor(house.now() / HOUR) * HOUR);
  // An hour that is told from now on is told anew every five minutes.
  const minutesNow = createMemo(() => Math.floor(house.now() / (5 * MINUTE)) * 5 * MINUTE);
  const view = createMemo<BenchView | null>(() => {
    const found = focus();
    if (found === null) return null;
    const at = measured.latest?.fedFocus(house.kitchen(), found) ?? found;
    const lists = asksList(at) ? questions() : questions.latest;
    const [kitchen, ways] = [house.kitchen(), house.ways()];
    const hour = (instant: Instant): string => house.hour(instant);
    const asked = lists?.questionView ?? null;
    const shown = benchView(kitchen, at, hour, asked, ways, house.equipment(), hourNow());
    const told = measured.latest?.withTarget;
    return told?.(shown, kitchen, at, ways, hour, minutesNow(), house.records()) ?? shown;
  });
  // By the recipe alone: the edge stays as it is drawn while facts come and go.
  const recipe = createMemo(() => focus()?.bake.context.recipe);
  const steps = createMemo(() => {
    const found = recipe();
    return found ? stepsOf(found) : [];
  });
  const ticks = createMemo(() => steps().map((_, i) => ({ long: isLong(steps(), i) })));
  const key = createMemo(() => {
    const at = focus();
    return (
      at &&
      `${view()?.who}:${view()?.stage}:${at.machine.context.entered[view()!.stage] ?? 0}:${view()!.task ?? ''}`
    );
  });
  // eslint-disable-next-line solid/reactivity -- asked anew each time
  const beside = makeBeside(house, () => props.bake, props.onBake);
  const [opened, setOpened] = createSignal<string | null>(null);
  const [page, setPage] = createSignal<ReadingPage | null>(null);
  const keyed = () => (page()?.at === 'number' ? (page() as NumberPage) : null);
  const [more, setMore] = createSignal<'more' | 'timers' | null>(null);
  keepHalfTaken({
    key,
    bake: () => props.bake,
    rings: () => house.ringing() !== null,
    page,
    setPage,
    onTurn: () => setOpened(null),
  });
  const ringing = createMemo(() => {
    const call = house.ringing();
    return call !== null && bakeOf(house.kitchen(), call.who) === props.bake ? call : null;
  });
  const stands = sayNext({ house, bake: () => props.bake, key, view });
  const gated = () => hasGate(view()) && opened() !== key() && !ringing();
  const [learning] = createResource(() => house.ways().learner === 'on', lessons);
  const lesson = createMemo(() => learning.latest?.makeLesson(house, view, () => !!ringing()));
  /** What a lesson says stands there as it is said. */
  const tells = (words: string): boolean =>
    mode() === 'lesson' && lesson()!.shown()!.page.spoken.includes(words);
  const mode = (): Mode =>
    keyed() ? 'pad' : lesson()?.shown() ? 'lesson' : gated() ? 'gate' : 'act';
  const own = () => view() !== null && faceOf(house.ways().small, view()!) === 'own';
  /** A running time stands over a wait, and over a hot call that is not being answered line by line. */
  const timed = (): boolean => {
    const at = view();
    if (at === null || mode() !== 'act' || own()) return false;
    const hot = at.call === 'hot' && (ringing() !== null || !asksList(focus()!));
    return at.deadline !== null || hot;
  };
  const reading = () => ({ house, bake: props.bake, act: key() ?? '', onTurn: setPage });
  // A core is of the loaf that is looked at, whichever bench shows it.
  const taking = () => ({ ...reading(), bake: view()?.bake ?? props.bake, page: keyed()! });
  const target = () => (mode() === 'act' && !own() && ringing() === null ? view()?.target : null);
  // Each read when it is asked for: what hangs on one of them does not follow the others.
  const place = (at: Accessor<BenchView>) => ({
    get view() {
      return at();
    },
    get mode() {
      return mode();
    },
    get taking() {
      return taking();
    },
    get lesson() {
      return lesson();
    },
    get ringing() {
      return ringing() !== null;
    },
    get timed() {
      return timed();
    },
    get mark() {
      return beside.mark();
    },
    get fresh() {
      return key();
    },
    onRead: setPage,
    onOpen: () => setOpened(key()),
  });
  const tick = createMemo(() => tickOf(steps(), view()?.stage ?? ''));
  const name = (at: BenchView): string => nameIn(house.kitchen(), at.who, at.stage);

  return (
    <Show when={view()} fallback={<OverFace {...props} />}>
      {(shown) => (
        <>
          <BenchFrame
            label={bench.label}
            further={controls.readOn}
            tone={shown().call === 'hot' ? 'hot' : 'normal'}
            edge={
              <RuledEdge
                label={fill(bench.edge, {
                  step: tick() + 1,
                  steps: steps().length,
                  name: beside.heats()
                    ? fill(bench.edgeOven, { name: name(shown()) })
                    : name(shown()),
                })}
                ticks={ticks()}
                at={tick()}
                others={beside.onEdge()}
              />
            }
            times={
              timed() ? (
                <ActTimes house={house} view={shown()} focus={focus()!} mark={beside.mark()} />
              ) : target() ? (
                <TargetFace target={target()!} onOpen={setPage} />
              ) : undefined
            }
            words={<WordsPlace {...props} {...place(shown)} />}
            slab={<SlabPlace {...props} {...place(shown)} />}
            controls={<ControlsPlace {...props} {...place(shown)} />}
            ear={<BenchEar house={house} view={shown()} onMore={() => setMore('more')} />}
            others={
              beside.any() ? (
                <OtherBakes
                  house={house}
                  others={beside.others()}
                  onBake={beside.goTo}
                  onTimers={() => setMore('timers')}
                />
              ) : undefined
            }
            over={
              <>
                <Show when={ringing() === null && house.away()}>
                  {/* Its own boundary: while it loads the act must not blink away. */}
                  <Suspense>
                    <ReturnFace house={house} view={shown()} />
                  </Suspense>
                </Show>
                <Caption
                  text={house.caption()}
                  seen={mode() !== 'pad' && !stands(house.caption()) && !tells(house.caption())}
                />
              </>
            }
          />
          <Suspense>
            <Show when={page()}>
              {(at) => <ReadingSheets {...reading()} stage={shown().stage} page={at()} />}
            </Show>
            <Show when={more()}>
              <MoreSheet
                {...props}
                begins={more()!}
                view={shown()}
                onRead={setPage}
                onClose={() => setMore(null)}
                onBake={beside.goTo}
              />
            </Show>
          </Suspense>
        </>
      )}
    </Show>
  );
}
