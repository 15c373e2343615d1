import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { dayAfter, daysBetween, type DayKey } from '../../../core/circle/day-key.ts';
import { askPage } from '../../../core/speech/words/day.ts';
import { standingWords } from '../../../core/speech/words/orders.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles, type TileOption } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { CircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';

/** Days on a page: beside another answer one less. */
const PAGE = 6;
const OTHER = 'other';

/** 'Sat' and its date under it; today and tomorrow by these words. */
function dayTile(clock: CircleClock, day: DayKey): TileOption {
  const [weekday = '', ...date] = clock.date(day).split(' ');
  const ahead = daysBetween(clock.today(), day);
  const label = ahead === 0 ? askPage.today : ahead === 1 ? askPage.tomorrow : weekday;
  return { value: day, label, means: ahead < 2 ? clock.date(day) : date.join(' ') };
}

/** Which day, in pages of so many; `step` days from one to the next. */
export function DayTiles(props: {
  readonly clock: CircleClock;
  readonly headline: string;
  readonly first: DayKey;
  readonly step: 1 | 7;
  readonly back: string;
  /** An answer that is no day, before all of them. */
  readonly other?: string | undefined;
  readonly chosen?: DayKey | undefined;
  readonly onOther?: (() => void) | undefined;
  readonly onDay: (day: DayKey) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [from, setFrom] = createSignal(0);
  const page = (): number => (props.other === undefined ? PAGE : PAGE - 1);
  const tiles = createMemo((): TileOption[] => {
    const days = Array.from({ length: page() }, (_, i) =>
      dayTile(props.clock, dayAfter(props.first, (from() + i) * props.step)),
    );
    return props.other === undefined ? days : [{ value: OTHER, label: props.other }, ...days];
  });
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.headline}>
          <Tiles
            label={props.headline}
            options={tiles()}
            chosen={props.chosen}
            onChoose={(value) => (value === OTHER ? props.onOther?.() : props.onDay(value))}
          />
        </Words>
      }
      controls={
        <>
          <Show when={from() > 0}>
            <Control
              label={standingWords.sooner}
              onPress={() => setFrom(Math.max(0, from() - page()))}
            />
          </Show>
          <Control
            label={standingWords.later}
            fresh={from()}
            onPress={() => setFrom(from() + page())}
          />
        </>
      }
    />
  );
}
