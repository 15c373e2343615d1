import { Show, type JSX } from 'solid-js';
import { controls } from '../../../core/speech/words/controls.ts';
import { ear } from '../../../core/speech/words/kitchen.ts';
import { gate } from '../../../core/speech/words/gate.ts';
import { small } from '../../../core/speech/words/small.ts';
import { Control } from '../../../parts/Control.tsx';
import { HoldSlab } from '../../../parts/HoldSlab.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { takeBackTarget } from '../../../../machines/kitchen/take-back.ts';
import { sayFor } from '../../bake-name.ts';
import { focusOn } from '../../focus.ts';
import type { House } from '../../house.ts';
import { toBaker } from '../../way-back.ts';
import { saidFor } from '../by-voice.ts';
import type { BenchView } from '../view.ts';
import { forgetPraise, pressed } from './praised.ts';
import { mayPress, smallSaid } from './small-view.ts';
import './paper.css';

/**
 * The child's big press, at a step that is safe: it says what is done. Where the oven is hot or a blade is
 * out it is a grown-up's, who holds it.
 */
export function SmallSlab(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly fresh: unknown;
}): JSX.Element {
  const press = (): void => {
    const { deed } = props.view.slab;
    if (deed === null || !props.house.holds) return;
    pressed(props.house, props.view);
    void props.house.take(deed);
  };
  return (
    <Show
      when={mayPress(props.house.ways().small, props.view)}
      fallback={
        <HoldSlab
          label={props.view.slab.label}
          holding={gate.holding}
          then={props.house.unheard() ? ear.untilTouch : small.held}
          onHeld={press}
        />
      }
    >
      <Slab
        label={props.view.slab.label}
        then={props.house.unheard() ? ear.untilTouch : small.palm}
        fresh={`${props.fresh} ${props.view.headline} ${props.view.slab.label}`}
        disabled={!props.house.holds}
        does={saidFor(props.view, props.view.slab.deed, true)}
        onPress={press}
      />
    </Show>
  );
}

/** Take that back, say that again, and the way back to the baker's view: the same three at every step. */
export function SmallControls(props: {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
}): JSX.Element {
  const say = (): void => {
    const { house, view } = props;
    const kitchen = house.kitchen();
    const focus = focusOn(kitchen, props.bake);
    const words = focus ? smallSaid(house.ways().small, kitchen, focus, view) : view.spoken;
    const told = [words, view.care].filter(Boolean).join(' ');
    house.say(sayFor(kitchen, view.bake, told, (at) => house.hour(at)));
  };
  const back = (): void => {
    // What a slab began, a keypad, may be left undone there.
    forgetPraise(props.house);
    toBaker(props.house);
  };
  return (
    <>
      <Control
        label={controls.takeBack}
        does="takeBack"
        disabled={!props.house.holds || takeBackTarget(props.house.kitchen()) === null}
        onPress={() => void props.house.takeBack()}
      />
      <Control label={controls.sayAgain} does="sayAgain" onPress={say} />
      <Control label={small.back} onPress={back} />
    </>
  );
}
