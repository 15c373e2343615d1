import { createMemo, createSignal, Show, untrack, type JSX } from 'solid-js';
import { FEEDS } from '../core/records/starter.ts';
import { bench } from '../core/speech/words/bench.ts';
import { keypad } from '../core/speech/words/controls.ts';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { said, shown } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { keyedHeat } from '../core/speech/keyed.ts';
import type { Celsius, Instant } from '../core/units.ts';
import { Control } from '../parts/Control.tsx';
import { NumberPad } from '../parts/NumberPad.tsx';
import { Tiles } from '../parts/Tiles.tsx';
import { Words } from '../parts/Words.tsx';
import type { House } from './house.ts';
import { KITCHEN } from './kitchen-range.ts';
import { nightOf } from './night-of.ts';
import { ratioOf } from './starter-view.ts';
import { ripeAt } from './strength-view.ts';

/** What a feed is told with: the kitchen's warmth, and its ratio by one press. */
export function makeFeed(house: House, onFed: () => void) {
  const [typed, setTyped] = createSignal<Celsius | null>(null);
  const [asks, setAsks] = createSignal(false);
  const celsius = () => typed() ?? house.kitchen().starter.fed?.celsius ?? house.lastKitchen();
  /** When a feed of now would be ripe: of the moment this was opened. */
  const ripeOf = (flour: number): Instant => {
    const [now, kitchen] = untrack(() => [house.now(), house.kitchen()] as const);
    return ripeAt(kitchen, now, flour, celsius()!);
  };
  const feed = (flour: number): void => {
    const warm = celsius();
    if (warm === null) return;
    void house
      .take({ kind: 'starter', did: 'fed', flour, celsius: warm, ...nightOf(house) })
      .then(() => {
        const ripe = house.kitchen().starter.marks['likely'];
        if (ripe !== undefined) {
          house.say(fill(words.feedSaid, said({ time: house.hour(ripe) })));
        }
      });
    onFed();
  };
  const asksWarmth = () => asks() || celsius() === null;
  /** The number keyed in is all of it. */
  const warmthTold = (): void => {
    house.half(words.warmthAsk).keep('');
    setAsks(false);
  };
  return { warmthTold, celsius, ripeOf, feed, asksWarmth, setAsks, setTyped };
}
export type Feed = ReturnType<typeof makeFeed>;

/** The ratios to choose from, each with when it would be ripe; before them the kitchen's warmth, once. */
export function FeedWords(props: { readonly house: House; readonly feed: Feed }): JSX.Element {
  const units = () => props.house.ways();
  const keyed = () => keyedHeat(KITCHEN, units());
  const options = createMemo(() =>
    props.feed.celsius() === null
      ? []
      : FEEDS.map((flour) => ({
          value: String(flour),
          label: fill(words.ripeAbout, {
            ratio: ratioOf(flour),
            time: props.house.hour(props.feed.ripeOf(flour)),
          }),
        })),
  );
  return (
    <Show
      when={!props.feed.asksWarmth()}
      fallback={
        <Words headline={words.warmthAsk}>
          <NumberPad
            label={words.warmthAsk}
            unit={keyed().unit}
            words={{
              point: bench.point,
              clear: keypad.clear,
              hint: fill(bench.usual, { range: keyed().range }),
              outside: fill(bench.only, { range: keyed().range }),
            }}
            min={keyed().least}
            max={keyed().most}
            half={props.house.half(words.warmthAsk)}
            onTyped={(n) => {
              const good = n !== null && n >= keyed().least && n <= keyed().most;
              props.feed.setTyped(good ? keyed().record(n) : null);
              // The pad stays till its number is told to be all.
              props.feed.setAsks(true);
            }}
          />
        </Words>
      }
    >
      <Words
        headline={words.feedAsk}
        detail={fill(words.feedDetail, shown({ celsius: props.feed.celsius()! }, units()))}
        care={words.care}
      >
        <Tiles
          label={words.feedAsk}
          options={options()}
          disabled={!props.house.holds}
          onChoose={(flour) => props.feed.feed(Number(flour))}
        />
      </Words>
    </Show>
  );
}

/** Another warmth than the one shown. */
export function WarmthControl(props: { readonly house: House; readonly feed: Feed }): JSX.Element {
  return (
    <Control
      label={fill(words.feedWarmth, shown({ celsius: props.feed.celsius()! }, props.house.ways()))}
      onPress={() => {
        props.feed.setTyped(null);
        props.feed.setAsks(true);
      }}
    />
  );
}
