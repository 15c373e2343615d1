import {
  createMemo,
  createSignal,
  lazy,
  Match,
  Show,
  Suspense,
  Switch,
  type JSX,
  type Signal,
} from 'solid-js';
import { bakeMarks } from '../../core/records/bake-marks.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { lessonPage } from '../../core/speech/words/lesson-page.ts';
import { start } from '../../core/speech/words/start.ts';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { Control } from '../../parts/Control.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenFace } from '../KitchenFace.tsx';
import { LoavesFace } from '../LoavesFace.tsx';
import { onLink } from '../link-here.ts';
import { KitchenEar } from '../KitchenEar.tsx';
import { starterIsTold } from '../starter-due.ts';
import { starterForBake } from '../starter-view.ts';
import { MOST_BESIDE, OtherBakes } from '../OtherBakes.tsx';
import { othersOf } from '../others.ts';
import { makeChosen } from './chosen.ts';
import { breadQuestion, type Draft } from './draft.ts';
import { FormulaFace, WhereFace } from './faces.tsx';
import { makeLastTime } from './last-time.tsx';
import { BrokenFormulas } from './BrokenFormulas.tsx';
import { PlanDay } from './PlanDay.tsx';
import { Questions } from './Questions.tsx';
import { CircleControl, StartControls } from './StartControls.tsx';
import { RunningBakes } from './RunningBakes.tsx';
import { WaysSheet } from './WaysSheet.tsx';
import './Start.css';

const Bread = lazy(() => import('./Bread.tsx'));
const SoundPage = lazy(() => import('../SoundPage.tsx'));

type Face = 'grid' | 'formula' | 'loaves' | 'bread' | 'kitchen' | 'where' | 'ways' | 'sound';

/** The page a bake begins on: what, how many, how warm, and where the dough is. */
export default function Start(props: {
  readonly house: House;
  readonly onBake: (id: string) => void;
  readonly onKitchen: () => void;
  readonly onDay: () => void;
  readonly onBook: () => void;
  readonly onCircle: () => void;
  readonly onLog: () => void;
  /** What was chosen, kept by whoever shows another page meanwhile. */
  readonly chosen: Signal<Draft | null>;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the same house and the same place all along
  const its = makeChosen(props.house, props.chosen);
  const { draft, formula, checked, change } = its;
  onLink(() => props.onBook());
  const [face, setFace] = createSignal<Face>('grid');
  const half = () => props.house.half('how warm is the kitchen');
  const formulas = () => props.house.formulas();
  const running = createMemo(() =>
    othersOf(props.house.kitchen(), null, bakeMarks(props.house.records()), (at) =>
      props.house.hour(at),
    ),
  );
  const pick = (part: Partial<Draft>): void => {
    change(part);
    setFace('grid');
  };
  // Before the first bake in earnest it is known whether the calls can be heard.
  const bakedNothing = (): boolean => Object.keys(props.house.kitchen().starts).length === 0;
  const unheard = (): boolean =>
    props.house.rehearsal === null && props.house.equipment().sound === null && bakedNothing();
  /** Where a bake begins with its starter, how that stands; a notice of it says more. */
  const starterNow = (): string | undefined =>
    draft().from === 'levain.feed' && !starterIsTold(props.house.kitchen())
      ? (starterForBake(props.house) ?? undefined)
      : undefined;
  const chosen = () => (draft().formula === null ? null : formula());
  // eslint-disable-next-line solid/reactivity -- the same house all along
  const lastTime = makeLastTime(props.house, chosen, starterNow);
  const told = () => (lastTime() ? undefined : starterNow());
  const go = async (): Promise<void> => {
    const { order } = checked();
    if (order === null) return;
    if (unheard()) return void setFace('sound');
    const bake = await props.house.begin(order);
    if (bake === null) return;
    props.chosen[1](null);
    half().keep('');
    props.house.half(breadQuestion(order.formula.id)).keep('');
    props.onBake(bake);
  };
  const breadAt = (keys: boolean): JSX.Element => (
    <Suspense>
      <Bread
        house={props.house}
        formula={formula()}
        bread={draft().bread}
        keys={keys}
        onAsk={() => setFace('bread')}
        onBread={(bread) => change({ bread })}
      />
    </Suspense>
  );
  /** A learner is asked one thing after the other: which bread, and how warm the kitchen is. */
  const firstLoaf = (): void => {
    props.house.choose({ learner: 'on' });
    change({ loaves: 1, from: 'levain.feed' });
    setFace('formula');
  };
  const learns = (): boolean => props.house.ways().learner === 'on' && draft().kitchen === null;
  return (
    <>
      <Show
        when={face() !== 'sound'}
        fallback={
          <Suspense>
            <SoundPage
              house={props.house}
              done={start.slab}
              then={start.then}
              back={start.title}
              onDone={() => void go()}
              onBack={() => setFace('grid')}
            />
          </Suspense>
        }
      >
        <BenchFrame
          label={start.title}
          further={controls.readOn}
          edge={<RuledEdge label={start.title} ticks={EDGE} at={0} />}
          words={
            <Switch>
              <Match when={face() === 'grid' || face() === 'ways'}>
                <Words headline={start.title} detail={told()} picture={lastTime()}>
                  <Questions chosen={its} units={props.house.ways()} onAsk={setFace}>
                    <PlanDay house={props.house} onDay={() => props.onDay()} />
                    <Control label={start.toBook} onPress={() => props.onBook()} />
                  </Questions>
                  <RunningBakes
                    house={props.house}
                    bakes={running().slice(MOST_BESIDE)}
                    onBake={(id) => props.onBake(id)}
                  />
                </Words>
              </Match>
              <Match when={face() === 'formula'}>
                <FormulaFace
                  formulas={formulas()}
                  units={props.house.ways()}
                  onPick={(id) => {
                    pick({ formula: id, bread: null });
                    if (learns()) setFace('kitchen');
                  }}
                />
              </Match>
              <Match when={face() === 'loaves'}>
                <LoavesFace loaves={draft().loaves} onChange={(loaves) => change({ loaves })}>
                  {breadAt(false)}
                </LoavesFace>
              </Match>
              <Match when={face() === 'bread'}>{breadAt(true)}</Match>
              <Match when={face() === 'kitchen'}>
                <KitchenFace
                  last={props.house.lastKitchen()}
                  units={props.house.ways()}
                  half={half()}
                  onTyped={(kitchen) => change({ kitchen })}
                />
              </Match>
              <Match when={face() === 'where'}>
                <WhereFace
                  joins={its.joins()}
                  chosen={draft().from}
                  onPick={(from) => pick({ from })}
                />
              </Match>
            </Switch>
          }
          slab={
            <Show
              when={face() === 'grid' || face() === 'ways'}
              fallback={
                <Slab
                  label={bench.thatsIt}
                  then={start.title}
                  fresh={face()}
                  onPress={() => setFace('grid')}
                />
              }
            >
              <Slab
                label={start.slab}
                then={checked().missing ?? (unheard() ? start.checkFirst : start.then)}
                fresh="start"
                disabled={checked().order === null || !props.house.holds}
                onPress={() => void go()}
              />
            </Show>
          }
          controls={
            <Show when={face() === 'grid' || face() === 'ways'}>
              <StartControls
                house={props.house}
                onCircle={() => props.onCircle()}
                onLog={() => props.onLog()}
                onKitchen={() => props.onKitchen()}
              />
            </Show>
          }
          others={
            running().length > 0 ? (
              <OtherBakes
                house={props.house}
                others={running()}
                onBake={(id) => props.onBake(id)}
              />
            ) : undefined
          }
          ear={<KitchenEar house={props.house} onMore={() => setFace('ways')} />}
        />
      </Show>
      <Show when={face() === 'ways'}>
        <WaysSheet house={props.house} onClose={() => setFace('grid')}>
          <Show
            when={props.house.rehearsal === null}
            fallback={<CircleControl onCircle={() => props.onCircle()} />}
          >
            <Control label={start.rehearse} onPress={() => props.house.rehearse()} />
          </Show>
          {/* Where nothing was ever baked: a grid of its own press would lose a question on a tall tablet. */}
          <Show when={bakedNothing()}>
            <Control label={lessonPage.first} onPress={firstLoaf} />
          </Show>
        </WaysSheet>
      </Show>
      <BrokenFormulas found={formulas()} />
    </>
  );
}

const EDGE = Array.from({ length: 13 }, (_, i) => ({ long: i % 4 === 0 }));
