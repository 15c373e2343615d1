import { createEffect, createSignal, lazy, Show, Suspense, untrack, type JSX } from 'solid-js';
import { PressGround } from '../parts/PressGround.tsx';
import type { DayDraft } from '../screens/day-draft.ts';
import type { House } from '../screens/house.ts';
import type { Draft } from '../screens/start/draft.ts';

/** Each screen comes when it is wanted; the service worker has them all without a network. */
const Bench = lazy(() => import('../screens/bench/Bench.tsx'));
const Book = lazy(() => import('../screens/book/Book.tsx'));
const AdultOnly = lazy(() =>
  import('../screens/AdultOnly.tsx').then((m) => ({ default: m.AdultOnly })),
);
const Circle = lazy(() => import('../screens/circle/Circle.tsx'));
const Day = lazy(() => import('../screens/day/Day.tsx'));
const Kitchen = lazy(() => import('../screens/kitchen/Kitchen.tsx'));
const Log = lazy(() => import('../screens/log/Log.tsx'));
const OverAll = lazy(() => import('./OverAll.tsx'));
const Start = lazy(() => import('../screens/start/Start.tsx'));
const WhereAreYou = lazy(() => import('../screens/WhereAreYou.tsx'));

/** Which screen is on show, and what lies over all of them. */
export function App(props: { readonly house: House }): JSX.Element {
  const house = props.house;
  // Coming back in the middle of a bake is coming back to its bench.
  const [bake, setBake] = createSignal(house.front.opens());
  const [kitchen, setKitchen] = createSignal(false);
  const [book, setBook] = createSignal(false);
  const [circle, setCircle] = createSignal(false);
  const [log, setLog] = createSignal(false);
  // Whoever looks up a formula or a past bake finds the start as it was left.
  const chosen = createSignal<Draft | null>(null);
  const [day, setDay] = createSignal<false | 'plan' | 'live' | DayDraft>(false);
  const asked = (): DayDraft | undefined => {
    const its = day();
    return typeof its === 'object' ? its : undefined;
  };
  // A call shows on a bench: it is here before any bake can ring, whatever screen is on show.
  createEffect(() => {
    if (Object.keys(house.kitchen().bakes).length === 0) return;
    void Bench.preload();
    house.front.fetch();
  });
  /** Whose bench is on show; null: another page is. */
  const shown = (): string | null =>
    kitchen() || day() || book() || circle() || log() ? null : bake();
  createEffect(() => {
    const front = house.front.brings(untrack(shown));
    if (front === null) return;
    setKitchen(false);
    setDay(false);
    setBook(false);
    setCircle(false);
    setLog(false);
    setBake(front);
  });
  return (
    <PressGround firstTouch={() => house.hush()}>
      <Suspense>
        <Show
          when={!house.lost()}
          fallback={<Show when={house.lost()}>{(lost) => <WhereAreYou lost={lost()} />}</Show>}
        >
          <Show when={kitchen()}>
            <AdultOnly house={house} onBack={() => setKitchen(false)}>
              <Kitchen house={house} fromBench={bake() !== null} onHome={() => setKitchen(false)} />
            </AdultOnly>
          </Show>
          <Show when={day()}>
            <Day
              house={house}
              live={day() === 'live'}
              asks={asked()}
              onBake={(id) => {
                setBake(id);
                setDay(false);
                setCircle(false);
              }}
              onHome={() => setDay(false)}
            />
          </Show>
          <Show when={book()}>
            <AdultOnly house={house} onBack={() => setBook(false)}>
              <Book house={house} onHome={() => setBook(false)} />
            </AdultOnly>
          </Show>
          <Show when={circle() && !day()}>
            <AdultOnly house={house} onBack={() => setCircle(false)}>
              <Circle
                house={house}
                onHome={() => setCircle(false)}
                onDay={(draft) => setDay(draft)}
              />
            </AdultOnly>
          </Show>
          <Show when={log()}>
            <AdultOnly house={house} onBack={() => setLog(false)}>
              <Log house={house} onHome={() => setLog(false)} />
            </AdultOnly>
          </Show>
          <Show when={!day() && !kitchen() && !book() && !circle() && !log() && bake() === null}>
            <Start
              house={house}
              onBake={(id) => setBake(id)}
              onKitchen={() => setKitchen(true)}
              onDay={() => setDay('plan')}
              onBook={() => setBook(true)}
              onCircle={() => setCircle(true)}
              onLog={() => setLog(true)}
              chosen={chosen}
            />
          </Show>
          {/* What is half done there waits behind the Kitchen and the Day: a reading begun, an open gate. */}
          <div hidden={kitchen() || day() !== false}>
            <Show when={bake()}>
              {(id) => (
                <Bench
                  house={house}
                  bake={id()}
                  onHome={() => setBake(null)}
                  onBake={(other) => setBake(other)}
                  onKitchen={() => setKitchen(true)}
                  onDay={() => setDay('live')}
                />
              )}
            </Show>
          </div>
        </Show>
      </Suspense>
      <Suspense>
        <OverAll house={house} bake={bake()} bench={house.lost() ? null : shown()} />
      </Suspense>
    </PressGround>
  );
}
