import { createEffect, createSignal, lazy, on, Show, Suspense, type JSX } from 'solid-js';
import { loavesIn } from '../../../machines/kitchen/lanes.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { lessonPages } from '../../core/lessons/lesson-pages.ts';
import type { BakeStage, OvenStage } from '../../core/records/stage.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { calls } from '../../core/speech/words/calls.ts';
import { timer } from '../../core/speech/words/timers.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { leapt } from '../../core/speech/words/leapt.ts';
import { lessonPage } from '../../core/speech/words/lesson-page.ts';
import { live } from '../../core/speech/words/live.ts';
import { ear } from '../../core/speech/words/kitchen.ts';
import { remedyPage } from '../../core/speech/words/remedy-page.ts';
import { start } from '../../core/speech/words/start.ts';
import { taskPress } from '../../core/speech/words/tasks.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { WipeLock } from '../../parts/WipeLock.tsx';
import { AdultOnly } from '../AdultOnly.tsx';
import { CareControl } from '../CareControl.tsx';
import type { House } from '../house.ts';
import { WaysControls } from '../WaysControls.tsx';
import { AheadList } from './AheadList.tsx';
import { OtherControls } from './OtherControls.tsx';
import { potsInUse } from './pots/pots-in-use.ts';
import { loavesToKeep } from './loaves-to-keep.ts';
import { longerWords } from './longer.ts';
import { aboutOf } from '../timer-view.ts';
import type { ReadingPage } from './readings/page.ts';
import { remediesHere } from './remedies-here.ts';
import type { BenchView } from './view.ts';

const FewerSheet = lazy(() => import('./FewerSheet.tsx'));
const LessonSheet = lazy(() => import('./LessonSheet.tsx'));
const LeapSheet = lazy(() => import('../LeapSheet.tsx'));
const RemedySheet = lazy(() => import('./RemedySheet.tsx'));
const SmallSheet = lazy(() => import('../SmallSheet.tsx'));
const TimerSheet = lazy(() => import('../TimerSheet.tsx'));

export interface MoreSheetProps {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
  readonly begins: 'more' | 'timers';
  readonly onRead: (page: ReadingPage) => void;
  readonly onClose: () => void;
  readonly onHome: () => void;
  readonly onKitchen: () => void;
  readonly onDay: () => void;
  readonly onBake: (id: string) => void;
}

/** Everything that is not the act: wiping, other bakes, ways of showing, the end. */
export default function MoreSheet(props: MoreSheetProps): JSX.Element {
  const [page, setPage] = createSignal<
    'more' | 'end' | 'fewer' | 'timers' | 'leap' | 'wipe' | 'wrong' | 'small' | 'lesson'
  >(
    // eslint-disable-next-line solid/reactivity -- it begins with it and turns its own pages
    props.begins,
  );
  const bake = () => props.house.kitchen().bakes[props.bake];
  const name = (): string => showBread(bake()?.context.recipe.formula.name ?? '');
  const stage = (): BakeStage | OvenStage => props.view.stage as BakeStage | OvenStage;
  /** A loaf in a hot pot comes out before its bake may end. */
  const inOven = (): boolean =>
    loavesIn(props.house.kitchen()).some((loaf) => bake()?.context.loaves.includes(loaf));
  /** What rings, in the words it is said in. */
  const called = (): string | undefined => {
    const call = props.house.ringing();
    const name = call && aboutOf(props.house.kitchen(), call);
    return call && name ? fill(calls[call.kind], { name }) : undefined;
  };
  const rises = (): boolean => {
    const at = bake();
    return at !== undefined && /^(bulk|proof)\./.test(stageOf(at));
  };
  const mayBeFewer = (): boolean => {
    const { all, least } = loavesToKeep(props.house.kitchen(), props.bake);
    return props.house.holds && least < all.length;
  };
  /** What may have been a sleep is asked about while nothing else was done since. */
  const mayHaveLeapt = (): boolean => {
    const { ahead } = props.house.leaps();
    const last = props.house.records().findLast(({ fact }) => fact.kind !== 'heard')?.fact;
    return props.house.holds && ahead !== null && (last?.at ?? Infinity) <= ahead.from;
  };
  // What is asked here is asked of one bake: it goes when a call brings another to the front.
  createEffect(
    on(
      () => props.bake,
      () => {
        if (page() !== 'wipe') props.onClose();
      },
      { defer: true },
    ),
  );
  const read = (page: ReadingPage): void => {
    props.onClose();
    props.onRead(page);
  };
  const end = (): void => {
    void props.house.take({ kind: 'press', who: props.bake, act: 'ended' });
    props.onClose();
  };
  return (
    <>
      <Show when={page() === 'more'}>
        <Sheet title={bench.more}>
          <Show when={props.view.ahead > 0}>
            <section class="more-ahead">
              <h2 class="sheet-part">{taskPress.aheadTitle}</h2>
              <AheadList house={props.house} bake={props.bake} onLast={() => props.onClose()} />
            </section>
          </Show>
          <p>{ear.awake[props.house.lit()]}</p>
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onClose()} />
            <Control label={controls.wipe} onPress={() => setPage('wipe')} />
            <Control label={timer.title} onPress={() => setPage('timers')} />
            <Show when={bake()}>
              <Control label={controls.newReading} onPress={() => read({ at: 'new' })} />
              <Control label={controls.readingsSoFar} onPress={() => read({ at: 'past' })} />
            </Show>
            <Show when={potsInUse(props.house.kitchen())}>
              <Control label={controls.showPots} onPress={() => read({ at: 'pots' })} />
            </Show>
            <Show when={rises()}>
              <Control label={controls.showRise} onPress={() => read({ at: 'rise' })} />
            </Show>
            <Show when={lessonPages(stage()).length > 0}>
              <Control label={lessonPage.open} onPress={() => setPage('lesson')} />
            </Show>
            <Show when={remediesHere(props.house, props.bake).length > 0}>
              <Control label={remedyPage.open} onPress={() => setPage('wrong')} />
            </Show>
            <Control
              label={controls.howMuchLonger}
              onPress={() => props.house.say(longerWords(props.house, props.view))}
            />
            <OtherControls
              house={props.house}
              bake={props.bake}
              onBake={(id) => {
                props.onBake(id);
                props.onClose();
              }}
            />
            <Show when={props.house.plan()}>
              <Control
                label={live.open}
                onPress={() => {
                  props.onClose();
                  props.onDay();
                }}
              />
            </Show>
            <Control label={bench.home} onPress={() => props.onHome()} />
            <Control
              label={start.toKitchen}
              onPress={() => {
                props.onClose();
                props.onKitchen();
              }}
            />
            <Control label={controls.smallHands} onPress={() => setPage('small')} />
            <WaysControls house={props.house} />
            <CareControl house={props.house} />
            <Show when={mayHaveLeapt()}>
              <Control label={leapt.askMore} onPress={() => setPage('leap')} />
            </Show>
            <Show when={mayBeFewer()}>
              <Control label={controls.fewer} onPress={() => setPage('fewer')} />
            </Show>
            <Show when={bake()}>
              <Control
                label={controls.endBake}
                disabled={inOven()}
                onPress={() => setPage('end')}
              />
            </Show>
          </div>
        </Sheet>
      </Show>
      <Show when={page() === 'small'}>
        <Suspense>
          <SmallSheet
            house={props.house}
            onChosen={() => props.onClose()}
            onClose={() => props.onClose()}
          />
        </Suspense>
      </Show>
      <Show when={page() === 'end'}>
        <AdultOnly house={props.house} onBack={() => setPage('more')}>
          <Sheet title={fill(controls.endBakeAsk, { name: name() })}>
            <div class="sheet-grid">
              <Control label={controls.keepBaking} onPress={() => setPage('more')} />
            </div>
            <HoldSlab
              label={controls.endBakeHold}
              holding={controls.endBakeHold}
              then={name()}
              onHeld={end}
            />
          </Sheet>
        </AdultOnly>
      </Show>
      <Show when={page() === 'fewer'}>
        <Suspense>
          <AdultOnly house={props.house} onBack={() => setPage('more')}>
            <FewerSheet house={props.house} bake={props.bake} onClose={() => props.onClose()} />
          </AdultOnly>
        </Suspense>
      </Show>
      <Show when={page() === 'timers'}>
        <Suspense>
          <TimerSheet house={props.house} onClose={() => props.onClose()} />
        </Suspense>
      </Show>
      <Show when={page() === 'wrong'}>
        <Suspense>
          <RemedySheet house={props.house} bake={props.bake} onClose={() => props.onClose()} />
        </Suspense>
      </Show>
      <Show when={page() === 'lesson'}>
        <Suspense>
          <LessonSheet house={props.house} stage={stage()} onClose={() => props.onClose()} />
        </Suspense>
      </Show>
      <Show when={page() === 'leap'}>
        <Suspense>
          <LeapSheet house={props.house} which="ahead" onClose={() => props.onClose()} />
        </Suspense>
      </Show>
      <Show when={page() === 'wipe'}>
        <WipeLock
          call={called()}
          words={(seconds) => fill(controls.wiping, { seconds })}
          onOver={() => props.onClose()}
        />
      </Show>
    </>
  );
}
