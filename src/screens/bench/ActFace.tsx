import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { EarPhrase } from '../../core/ear/phrases.ts';
import type { NumberSlot } from '../../core/records/reading-slot.ts';
import { clockAsk } from '../../core/speech/words/left.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { ear } from '../../core/speech/words/kitchen.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import { sayFor } from '../bake-name.ts';
import type { House } from '../house.ts';
import { isByHand, saidFor } from './by-voice.ts';
import { numberPage, picturePage, type ReadingPage } from './readings/page.ts';
import { faceOf } from './small/face-of.ts';
import type { BenchView, Third } from './view.ts';

const ReadAnswer = lazy(() => import('../ReadAnswer.tsx'));
const childs = () => import('./small/SmallPress.tsx');
const SmallSlab = lazy(() => childs().then((m) => ({ default: m.SmallSlab })));
const SmallControls = lazy(() => childs().then((m) => ({ default: m.SmallControls })));

interface ActSlabProps {
  readonly house: House;
  readonly view: BenchView;
  readonly fresh: unknown;
  readonly onRead: (page: ReadingPage) => void;
}

/** The big press: the act is done. It is a child's where the step is. */
export function ActSlab(props: ActSlabProps): JSX.Element {
  return (
    <Show
      when={faceOf(props.house.ways().small, props.view) === 'own'}
      fallback={<BakerSlab {...props} />}
    >
      <Suspense>
        <SmallSlab {...props} />
      </Suspense>
    </Show>
  );
}

function BakerSlab(props: ActSlabProps): JSX.Element {
  const [asks, setAsks] = createSignal(false);
  const withChild = (): boolean => props.house.ways().small !== 'off';
  const press = (): void => {
    const { view } = props;
    const { deed } = view.slab;
    if (withChild() && deed?.kind === 'press' && deed.act === 'ended') return void setAsks(true);
    if (withChild()) void import('./small/praised.ts').then((m) => m.pressed(props.house, view));
    if (deed) void props.house.take(deed);
    else if (props.view.measures === 'rise.dough') props.onRead(picturePage('rise.dough'));
    else props.onRead(numberPage(props.view.measures));
  };
  const end = (): void => {
    setAsks(false);
    const { deed } = props.view.slab;
    if (deed) void props.house.take(deed);
  };
  return (
    <>
      <Slab
        label={props.view.slab.label}
        then={props.house.unheard() ? ear.untilTouch : props.view.slab.then}
        tone={props.view.call === 'hot' ? 'hot' : 'normal'}
        fresh={`${props.fresh} ${props.view.headline} ${props.view.slab.label}`}
        disabled={!props.house.holds}
        does={saidFor(props.view, props.view.slab.deed, true)}
        onPress={press}
      />
      <Show when={asks()}>
        <Suspense>
          <ReadAnswer house={props.house} onRight={end} onBack={() => setAsks(false)} />
        </Suspense>
      </Show>
    </>
  );
}

const LABELS: Readonly<Record<Exclude<Third, 'weigh' | 'clock'>, keyof typeof controls>> = {
  reading: 'newReading',
  ready: 'itsReady',
  why: 'notNowWhy',
  probe: 'noProbe',
  sheet: 'showSheet',
  pots: 'showPots',
};

const WEIGH: Readonly<Partial<Record<NumberSlot, keyof typeof controls>>> = {
  'weight.dough': 'weighDough',
  'weight.piece': 'weighPiece',
  'weight.loaf': 'weighLoaf',
  coreTemperature: 'probeCore',
};

interface ActControlsProps {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
  /** When it changes, what the third control means is another act's. */
  readonly fresh: unknown;
  readonly onRead: (page: ReadingPage) => void;
}

/** With small hands the way back to the baker's view stands where the act's own control does. */
export function ActControls(props: ActControlsProps): JSX.Element {
  return (
    <Show when={props.house.ways().small !== 'off'} fallback={<BakerControls {...props} />}>
      <Suspense>
        <SmallControls {...props} />
      </Suspense>
    </Show>
  );
}

/** Take that back, say that again, and the one control that fits the act. */
function BakerControls(props: ActControlsProps): JSX.Element {
  const label = (what: Third): string => {
    if (what === 'clock') return clockAsk.press;
    const name = what === 'weigh' ? WEIGH[props.view.measures] : LABELS[what];
    return name === undefined ? '' : controls[name];
  };
  const said = (what: Third): EarPhrase | undefined => {
    if (isByHand(props.view)) return undefined;
    if (what === 'ready') return saidFor(props.view, props.view.ready, false);
    if (what === 'sheet') return 'showMe';
    return what === 'reading' || what === 'weigh' ? 'reading' : undefined;
  };
  const third = (): void => {
    const { third: what, ready, who, care, detail } = props.view;
    if (what === 'reading') props.onRead({ at: 'new' });
    else if (what === 'sheet' || what === 'pots') props.onRead({ at: what });
    else if (what === 'weigh') props.onRead(numberPage(props.view.measures));
    else if (what === 'ready' && ready) void props.house.take(ready);
    else if (what === 'clock') void props.house.clockWasWrong();
    else if (what === 'probe') void props.house.take({ kind: 'press', who, act: 'unmeasured' });
    else props.house.say(care ?? detail);
  };
  return (
    <>
      <Control
        label={controls.takeBack}
        does="takeBack"
        disabled={!props.house.holds || takeBackTarget(props.house.kitchen()) === null}
        onPress={() => void props.house.takeBack()}
      />
      <Control
        label={controls.sayAgain}
        does="sayAgain"
        onPress={() =>
          props.house.say(
            sayFor(props.house.kitchen(), props.view.bake, props.view.spoken, (at) =>
              props.house.hour(at),
            ),
          )
        }
      />
      <Show when={props.view.third}>
        {(what) => (
          <Control
            label={label(what())}
            fresh={`${props.fresh} ${label(what())}`}
            does={said(what())}
            onPress={third}
          />
        )}
      </Show>
    </>
  );
}
