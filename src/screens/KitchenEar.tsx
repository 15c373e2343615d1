import { createMemo, Show, type JSX } from 'solid-js';
import type { Call } from '../../machines/attention/attention.ts';
import { bench } from '../core/speech/words/bench.ts';
import { controls } from '../core/speech/words/controls.ts';
import { ear } from '../core/speech/words/kitchen.ts';
import { Control } from '../parts/Control.tsx';
import { EarPanel } from '../parts/EarPanel.tsx';
import { HeardMark } from '../parts/HeardMark.tsx';
import { heardWords, isLost } from './heard-words.ts';
import type { House } from './house.ts';
import { makePutOff } from './put-off.ts';

/** Sound and screen, a call that may be put off, and the way to everything that is not the act. */
export function KitchenEar(props: {
  readonly house: House;
  /** What calls here and was hushed. */
  readonly hushed?: Call | null;
  /** The way back to small hands: it stands where the ear has nothing to tell but that all is well. */
  readonly toChild?: (() => void) | undefined;
  readonly onMore: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- asked anew each time
  const putOff = makePutOff(props.house, () => props.hushed ?? null);
  const silent = (): boolean => ['locked', 'lost'].includes(props.house.sound());
  const putOffHere = () => {
    const press = putOff.press();
    const state = props.house.sound();
    const mute = state === 'locked' || state === 'unavailable' ? ear.mute[state] : undefined;
    return press && { ...press, mute };
  };
  const sound = (): string => {
    if (props.house.unheard()) return ear.unheard;
    return (!silent() && putOff.quietTill()) || ear.sound[props.house.sound()];
  };
  // What the screen does is told under More too.
  const isWell = (): boolean =>
    props.house.sound() === 'armed' &&
    !props.house.unheard() &&
    !putOff.press() &&
    putOff.quietTill() === null;
  const heard = () => {
    const shown = props.house.hearing();
    return shown.state === 'off' ? undefined : { ...shown, ...heardWords(shown), alone: isWell() };
  };
  const again = (): (() => void) | undefined => {
    const shown = props.house.hearing();
    if (!isWell() || !isLost(shown.state)) return undefined;
    return () => props.house.showHearing({ ...shown, state: 'shut' });
  };
  const leadsBack = createMemo(() => props.toChild !== undefined && isWell());
  return (
    <>
      <Show
        when={!leadsBack()}
        fallback={
          <Control
            label={controls.smallHands}
            picture={
              props.house.hearing().state === 'off' ? undefined : (
                <HeardMark state={props.house.hearing().state} />
              )
            }
            onPress={() => props.toChild?.()}
          />
        }
      >
        <EarPanel
          sound={sound()}
          alarm={props.house.unheard()}
          lit={
            putOff.quietTill() || props.house.lit() === 'held' ? '' : ear.awake[props.house.lit()]
          }
          heard={heard()}
          onArm={silent() ? () => props.house.armSound() : again()}
          putOff={props.house.sound() === 'lost' ? undefined : putOffHere()}
        />
      </Show>
      <Control label={bench.more} onPress={() => props.onMore()} />
    </>
  );
}
