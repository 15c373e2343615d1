import type { JSX } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { circle } from '../../../core/speech/words/circle.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { Shopping } from './Shopping.tsx';
import { openStore } from './store.ts';

/** What is to be bought, come to from the orders of a day. */
export default function ShoppingFor(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly day: DayKey | null;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house and its circle are one
  const store = openStore(props.house, props.circle);
  return (
    <Shopping
      store={store}
      day={props.day}
      back={props.day === null ? circle.title : showDay(props.day)}
      onBack={() => props.onBack()}
    />
  );
}
