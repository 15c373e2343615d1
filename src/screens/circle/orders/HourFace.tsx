import { createMemo, type JSX } from 'solid-js';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import { orderFace, orderPage } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { CircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { usualHours } from './usual-hours.ts';

const HALF_HOUR = 30;
const LAST = 24 * 60 - HALF_HOUR;

/** At what time bread is fetched: one of the usual hours, or half an hour beside it. */
export function HourFace(
  props: Pick<FaceProps, 'circle' | 'onBack'> & {
    readonly clock: CircleClock;
    readonly at: MinuteOfDay | null;
    readonly back: string;
    readonly onHour: (at: MinuteOfDay | null) => void;
    /** The same, and the page stays. */
    readonly onShift: (at: MinuteOfDay) => void;
  },
): JSX.Element {
  // As they were when the page came: what is pressed does not move under the hand.
  // eslint-disable-next-line solid/reactivity
  const hours = usualHours(props.circle.circle());
  const options = createMemo(() =>
    hours.map((minute) => ({ value: String(minute), label: props.clock.hour(minute) })),
  );
  const shift = (by: number): void => {
    const to = (props.at ?? 12 * 60) + by;
    props.onShift(Math.min(LAST, Math.max(0, to)));
  };
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={orderFace.hourAsk}
          detail={
            props.at === null
              ? undefined
              : fill(orderFace.hourSaid, { time: props.clock.hour(props.at) })
          }
        >
          <Tiles
            label={orderFace.hourAsk}
            options={options()}
            chosen={props.at === null ? undefined : String(props.at)}
            onChoose={(value) => props.onHour(Number(value))}
          />
        </Words>
      }
      controls={
        <>
          <Control label={orderFace.earlier} onPress={() => shift(-HALF_HOUR)} />
          <Control label={orderFace.later} onPress={() => shift(HALF_HOUR)} />
          <Control label={orderPage.anyHour} onPress={() => props.onHour(null)} />
        </>
      }
    />
  );
}
