import type { JSX } from 'solid-js';
import { circle as circleWords } from '../../../core/speech/words/circle.ts';
import { orderPage } from '../../../core/speech/words/orders.ts';
import { createCircleClock } from '../circle-clock.ts';
import type { FaceProps } from '../face.ts';
import { DayTiles } from './DayTiles.tsx';

/** A day that has no order yet, or one far off. */
export function AnotherDay(props: FaceProps): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  return (
    <DayTiles
      clock={clock}
      headline={orderPage.dayAsk}
      first={clock.today()}
      step={1}
      back={circleWords.title}
      onDay={(day) => {
        // In this page's place: from the day it is one press back to the Circle.
        props.onBack();
        props.onOpen({ at: 'day', day });
      }}
      onBack={() => props.onBack()}
    />
  );
}
