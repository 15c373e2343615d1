import type { JSX } from 'solid-js';
import { bench } from '../core/speech/en/bench.ts';
import { ear } from '../core/speech/en/kitchen.ts';
import { Control } from '../parts/Control.tsx';
import { EarPanel } from '../parts/EarPanel.tsx';
import type { House } from './house.ts';

/** Sound and screen, and the way to everything that is not the act. */
export function KitchenEar(props: {
  readonly house: House;
  readonly onMore: () => void;
}): JSX.Element {
  return (
    <>
      <EarPanel
        sound={ear.sound[props.house.sound()]}
        lit={props.house.lit() === 'held' ? '' : ear.awake[props.house.lit()]}
        onArm={props.house.sound() === 'locked' ? () => props.house.armSound() : undefined}
      />
      <Control label={bench.more} onPress={() => props.onMore()} />
    </>
  );
}
