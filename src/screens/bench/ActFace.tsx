import { Show, type JSX } from 'solid-js';
import type { NumberSlot } from '../../core/records/reading-slot.ts';
import { clockAsk } from '../../core/speech/words/left.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { ear } from '../../core/speech/words/kitchen.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import { sayFor } from '../bake-name.ts';
import type { House } from '../house.ts';
import { numberPage, picturePage, type ReadingPage } from './readings/page.ts';
import type { BenchView, Third } from './view.ts';

/** The big press: the act is done. */
export function ActSlab(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly fresh: unknown;
  readonly onRead: (page: ReadingPage) => void;
}): JSX.Element {
  const press = (): void => {
    const { deed } = props.view.slab;
    if (deed) void props.house.take(deed);
    else if (props.view.measures === 'rise.dough') props.onRead(picturePage('rise.dough'));
    else props.onRead(numberPage(props.view.measures));
  };
  return (
    <Slab
      label={props.view.slab.label}
      then={props.house.unheard() ? ear.untilTouch : props.view.slab.then}
      tone={props.view.call === 'hot' ? 'hot' : 'normal'}
      fresh={`${props.fresh} ${props.view.headline} ${props.view.slab.label}`}
      disabled={!props.house.holds}
      onPress={press}
    />
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

/** Take that back, say that again, and the one control that fits the act. */
export function ActControls(props: {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
  /** When it changes, what the third control means is another act's. */
  readonly fresh: unknown;
  readonly onRead: (page: ReadingPage) => void;
}): JSX.Element {
  const label = (what: Third): string => {
    if (what === 'clock') return clockAsk.press;
    const name = what === 'weigh' ? WEIGH[props.view.measures] : LABELS[what];
    return name === undefined ? '' : controls[name];
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
            onPress={third}
          />
        )}
      </Show>
    </>
  );
}
