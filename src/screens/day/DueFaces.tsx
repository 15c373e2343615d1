import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { askPage } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles, type TileOption } from '../../parts/Tiles.tsx';
import type { House } from '../house.ts';
import { AsksPage } from './AsksPage.tsx';
import { createWall, HALF_HOUR, HOURS, type Minute, type Wall } from './day-hours.ts';

const NOW = 'now';
/** Days on a page: beside *start now* one less. */
const PAGE = 6;

/** A day as a tile: its name, and its date under it. */
export function dayTile(house: House, wall: Wall, ahead: number): TileOption {
  const at = wall.at(wall.day(ahead), 12 * 60);
  const date = house.date(at).replace(/ \d{4}$/, '');
  const label = ahead === 0 ? askPage.today : ahead === 1 ? askPage.tomorrow : house.day(at);
  return { value: String(ahead), label, means: date };
}

/** Which day, in pages of so many. */
export function DayFace(props: {
  readonly house: House;
  readonly headline: string;
  /** Whether it may begin at once, with no hour it is due. */
  readonly now: boolean;
  readonly back: string;
  readonly onNow?: () => void;
  readonly onDay: (ahead: number) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [from, setFrom] = createSignal(0);
  // eslint-disable-next-line solid/reactivity -- the house is one
  const wall = createWall(props.house);
  const days = createMemo((): TileOption[] => {
    const first = from() === 0 && props.now;
    const count = first ? PAGE - 1 : PAGE;
    const tiles = Array.from({ length: count }, (_, i) => dayTile(props.house, wall(), from() + i));
    return first
      ? [{ value: NOW, label: askPage.startNow, means: askPage.startNowDetail }, ...tiles]
      : tiles;
  });
  const next = (): number => (props.now ? PAGE - 1 : PAGE);
  return (
    <AsksPage
      house={props.house}
      headline={props.headline}
      back={props.back}
      fresh={from()}
      controls={
        <Show
          when={from() === 0}
          fallback={<Control label={askPage.sooner} onPress={() => setFrom(0)} />}
        >
          <Control label={askPage.later} onPress={() => setFrom(next())} />
        </Show>
      }
      onBack={() => props.onBack()}
    >
      <Tiles
        label={props.headline}
        options={days()}
        onChoose={(value) => (value === NOW ? props.onNow?.() : props.onDay(Number(value)))}
      />
    </AsksPage>
  );
}

/** At what time of that day: one of the usual hours, or half an hour beside it. */
export function HourFace(props: {
  readonly house: House;
  readonly ahead: number;
  readonly due: Instant | null;
  readonly onHour: (at: Instant) => void;
  /** The same, and the page stays. */
  readonly onShift: (at: Instant) => void;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const wall = createWall(props.house);
  const day = () => wall().day(props.ahead);
  const at = (minute: Minute): Instant => wall().at(day(), minute);
  const date = (): string => {
    const { label, means } = dayTile(props.house, wall(), props.ahead);
    return props.ahead < 2 ? label : `${label} ${means}`;
  };
  const isToday = (due: Instant): boolean => wall().ahead(due) === props.ahead;
  const said = (): Instant | null => (props.due !== null && isToday(props.due) ? props.due : null);
  const shift = (by: number): void => {
    const to = (said() ?? at(12 * 60)) + by;
    if (isToday(to)) props.onShift(Math.round(to / MINUTE) * MINUTE);
  };
  const hours = createMemo(() =>
    HOURS.map((minute) => ({ value: String(minute), label: props.house.hour(at(minute)) })),
  );
  const headline = (): string => fill(askPage.hour, { date: date() });
  return (
    <AsksPage
      house={props.house}
      headline={headline()}
      detail={
        said() === null ? undefined : fill(askPage.hourSaid, { time: props.house.hour(said()!) })
      }
      back={askPage.title}
      fresh="hour"
      controls={
        <>
          <Control label={askPage.earlier} onPress={() => shift(-HALF_HOUR)} />
          <Control label={askPage.laterHour} onPress={() => shift(HALF_HOUR)} />
        </>
      }
      onBack={() => props.onBack()}
    >
      <Tiles
        label={headline()}
        options={hours()}
        onChoose={(value) => props.onHour(at(Number(value)))}
      />
    </AsksPage>
  );
}
