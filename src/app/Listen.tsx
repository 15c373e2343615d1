import {
  createEffect,
  createMemo,
  createSignal,
  lazy,
  on,
  onCleanup,
  onMount,
  Show,
  Suspense,
  type JSX,
} from 'solid-js';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { SETTLE_MS } from '../../machines/listening/listening.ts';
import type { Stop } from '../../machines/ports.ts';
import type { EarPerson } from '../core/ear/person.ts';
import type { EarPhrase } from '../core/ear/phrases.ts';
import { NO_EAR, type EarShown } from '../core/ear/shown.ts';
import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { earSays } from '../core/speech/words/ear-bench.ts';
import { BEFORE_CALL, callsAt } from '../screens/calls-soon.ts';
import { focusOn } from '../screens/focus.ts';
import type { HouseEar } from '../screens/house-ear.ts';
import type { House } from '../screens/house.ts';
import { makeByVoice } from './by-voice.ts';
import { listenBehindTone } from './listen-behind-tone.ts';
import { makeListening } from './listening.ts';

const LessonSheet = lazy(() => import('../screens/bench/LessonSheet.tsx'));

const later = (ms: number, then: () => void): Stop => {
  const timer = setTimeout(then, ms);
  return () => clearTimeout(timer);
};

const LOST = ['denied', 'none', 'gone', 'failed'] as const;
const lostOf = (state: EarShown['state']) => LOST.find((why) => why === state);

/** Hears the baker beside an act, and presses for them what a pedal would. */
export default function Listen(props: {
  readonly house: House;
  /** The bake whose bench is on show; null: another page is. */
  readonly bake: string | null;
  /** ms on a clock that does not run back, and a wait on it; the room's unless given. */
  readonly now?: (() => number) | undefined;
  readonly later?: ((ms: number, then: () => void) => Stop) | undefined;
}): JSX.Element {
  /* eslint-disable solid/reactivity -- a page has one house and one clock */
  const { house } = props;
  const now = props.now ?? (() => performance.now());
  const wait = props.later ?? later;
  /* eslint-enable solid/reactivity */
  const [ear, setEar] = createSignal<HouseEar | null>(null);
  const [lesson, setLesson] = createSignal<BakeStage | OvenStage | null>(null);
  const [hidden, setHidden] = createSignal(document.hidden);
  /** Who spoke last is the likeliest to speak again. */
  let last: string | null = null;
  let pressing = false;
  const told = new Set<EarShown['state']>();

  const people = (): readonly EarPerson[] => {
    const helps = house.ways().small !== 'off';
    const rank = ({ id, child }: EarPerson): number =>
      (helps && child ? 0 : 2) + (id === last ? 0 : 1);
    return (ear()?.people() ?? []).toSorted((a, b) => rank(a) - rank(b));
  };
  const known = createMemo(
    () =>
      new Set(
        (ear()?.people() ?? []).flatMap(({ sayings }) => Object.keys(sayings) as EarPhrase[]),
      ),
  );
  const voice = makeByVoice({
    house,
    bake: () => props.bake,
    pressing(press) {
      pressing = true;
      press();
      pressing = false;
    },
    settled: (then) => void wait(SETTLE_MS, then),
    onLesson: setLesson,
  });
  const listening = makeListening({
    now,
    later: wait,
    listen: (ask, tell, opens) => listenBehindTone(ear()!, ask, tell, opens),
    ask() {
      const engine = house.equipment().ear;
      const active = voice.active(known());
      return engine === 'off' || active.length === 0 ? null : { engine, people: people(), active };
    },
    mean(heard, active) {
      if (heard.phrase !== null) last = heard.person;
      return voice.mean(heard, active);
    },
    onEnded: voice.onEnded,
    onShown(shown) {
      const before = house.hearing().state;
      house.showHearing(shown);
      if (shown.state === before) return;
      const wasOpen = before === 'open' || before === 'speaks';
      const isShut = shown.state === 'shut' || shown.state === 'tiles';
      // Where something else sounds, that tells it.
      if (wasOpen && isShut && !sounds()) void ear()?.tone('shut');
      const lost = lostOf(shown.state);
      if (shown.state === 'tiles') house.say(earSays.tiles);
      // Once: it stands beside the act from then on.
      else if (lost && !told.has(lost)) house.say(earSays.lost[told.add(lost) && lost]);
    },
  });

  const wanted = (): boolean =>
    props.bake !== null &&
    house.holds &&
    !hidden() &&
    house.equipment().ear !== 'off' &&
    known().size > 0;
  const nextCall = createMemo(() => (wanted() ? callsAt(house.kitchen()) : null));
  const sounds = (): boolean => {
    const at = nextCall();
    const before = BEFORE_CALL * (house.rehearsal ?? 1);
    return (
      house.ringing() !== null ||
      house.caption() !== '' ||
      (at !== null && at - house.now() <= before)
    );
  };
  createEffect(
    on([wanted, sounds], ([wanted, sounds]) => listening.tell({ type: 'sync', wanted, sounds })),
  );
  const act = createMemo(() => {
    const at = props.bake === null ? null : focusOn(house.kitchen(), props.bake);
    const stage = at && stageOf(at.machine);
    return at && `${at.who} ${stage} ${at.machine.context.entered[stage!]}`;
  });
  createEffect(on(act, () => listening.tell({ type: 'act' }), { defer: true }));
  // The panel beside the act asks for it by showing it shut.
  createEffect(
    on(house.hearing, ({ state }) => {
      if (state === 'shut' && lostOf(listening.state())) listening.tell({ type: 'again' });
    }),
  );

  const onPress = (e: Event): void => {
    if (pressing || (e instanceof KeyboardEvent && e.repeat)) return;
    listening.tell({ type: 'pressed' });
  };
  const onSeen = (): void => void setHidden(document.hidden);
  const page = new MutationObserver(() => listening.refresh());
  onMount(() => {
    window.addEventListener('pointerup', onPress, true);
    window.addEventListener('keydown', onPress, true);
    document.addEventListener('visibilitychange', onSeen);
    page.observe(document.body, {
      subtree: true,
      childList: true,
      attributeFilter: ['data-does', 'aria-disabled', 'hidden'],
    });
    house.ear().then(setEar, () => house.showHearing({ state: 'failed', active: [] }));
  });
  onCleanup(() => {
    window.removeEventListener('pointerup', onPress, true);
    window.removeEventListener('keydown', onPress, true);
    document.removeEventListener('visibilitychange', onSeen);
    page.disconnect();
    listening.stop();
    house.showHearing(NO_EAR);
  });
  return (
    <Show when={lesson()}>
      {(stage) => (
        <Suspense>
          <LessonSheet house={house} stage={stage()} onClose={() => setLesson(null)} />
        </Suspense>
      )}
    </Show>
  );
}
