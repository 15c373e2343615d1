import { createMemo, type JSX } from 'solid-js';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import { hoursPage } from '../../../core/speech/words/circle-oven.ts';
import { askPage } from '../../../core/speech/words/day.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMinute } from '../../../core/speech/show-time.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';

const HALF_HOUR = 30;
const DAY = 1440;

/** A minute of the day: one of the usual hours, or half an hour beside what stands. */
export function MinuteFace(props: {
  readonly house: Pick<House, 'ways'>;
  readonly ask: string;
  readonly detail?: string | undefined;
  /** Six of them. */
  readonly hours: readonly MinuteOfDay[];
  /** What stands; null: nothing was said. */
  readonly at: MinuteOfDay | null;
  /** A minute that cannot be it. */
  readonly not?: MinuteOfDay | null;
  readonly back: string;
  readonly onMinute: (at: MinuteOfDay) => void;
  /** The same, and the page stays. */
  readonly onShift: (at: MinuteOfDay) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const words = (minute: MinuteOfDay): string => showMinute(minute, props.house.ways().clock);
  const options = createMemo(() =>
    props.hours.map((minute) => ({
      value: String(minute),
      label: words(minute),
      off: minute === props.not,
    })),
  );
  const shifted = (by: number): MinuteOfDay => {
    const to = ((props.at ?? props.hours[0]!) + by + DAY) % DAY;
    return to === props.not ? (to + by + DAY) % DAY : to;
  };
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={props.ask}
          detail={props.at === null ? props.detail : fill(hoursPage.now, { time: words(props.at) })}
        >
          <Tiles
            label={props.ask}
            options={options()}
            chosen={props.at === null ? undefined : String(props.at)}
            onChoose={(value) => props.onMinute(Number(value))}
          />
        </Words>
      }
      controls={
        <>
          <Control label={askPage.earlier} onPress={() => props.onShift(shifted(-HALF_HOUR))} />
          <Control label={askPage.laterHour} onPress={() => props.onShift(shifted(HALF_HOUR))} />
        </>
      }
    />
  );
}
