import { createSignal, For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { BakeMark } from './BakeMark.tsx';
import { Pressable } from './Pressable.tsx';
import type { TapeLane, TapeRow, TapeStretch, TapeTouch } from './tape-shown.ts';
import { unbroken } from './unbroken.ts';
import './Tape.css';

export interface TapeProps {
  readonly rows: readonly TapeRow[];
  /** The whole of it in a sentence or two, for ears. */
  readonly alt: string;
  /** How many letters a row is wide, as it is laid out: told again whenever that changes. */
  readonly onRoom: (letters: number) => void;
  readonly onTouch: (key: string) => void;
}

/** A letter’s width in its font’s size, as most of them are. */
const LETTER = 0.56;
/** The rule is drawn so wide and so deep, whatever its real size. */
const [WIDE, DEEP] = [1000, 100];
/** From the top: the window’s bars, the line, ticks and stems down from it. */
const Y = { bars: [12, 36], line: 50, short: 66, long: 78 } as const;
/** Bars of a window for each letter. */
const BARS = 1.9;

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;
const at = (share: number): string => (share * WIDE).toFixed(1);
const down = (x: number, from: number, to: number): string => `M${at(x)} ${from}V${to}`;

/** The bars of a window stand on one measure, so that two windows that meet are one. */
const barsOf = ({ from, to }: TapeStretch, bars: number): string =>
  Array.from({ length: bars }, (_, i) => (i + 0.5) / bars)
    .filter((x) => x >= from && x <= to)
    .map((x) => down(x, ...Y.bars))
    .join('');

/** What of the line is left between the hours in which nobody is there. */
function present(line: TapeStretch, away: readonly TapeStretch[]): TapeStretch[] {
  const left: TapeStretch[] = [];
  let from = line.from;
  for (const span of away.toSorted((a, b) => a.from - b.from)) {
    if (span.from > from) left.push({ from, to: span.from });
    from = Math.max(from, span.to);
  }
  return from < line.to ? [...left, { from, to: line.to }] : left;
}
const along = ({ from, to }: TapeStretch): string => `M${at(from)} ${Y.line}H${at(to)}`;

function Rule(props: { readonly row: TapeRow; readonly letters: number }): JSX.Element {
  const bars = (one: TapeStretch): string => barsOf(one, Math.round(props.letters * BARS));
  const path = (parts: readonly string[]): string => parts.join('');
  return (
    <svg class="tape-rule" viewBox={`0 0 ${WIDE} ${DEEP}`} preserveAspectRatio="none">
      <path class="tape-line" d={path(present(props.row.line, props.row.away).map(along))} />
      <path class="tape-away" d={path(props.row.away.map(along))} />
      <path class="tape-window" d={path(props.row.windows.map(bars))} />
      <path
        class="tape-ticks"
        d={path(props.row.ticks.map(({ x, long }) => down(x, Y.line, long ? Y.long : Y.short)))}
      />
      <path class="tape-stems" d={path(props.row.touches.map(({ x }) => down(x, 0, DEEP)))} />
    </svg>
  );
}

function Box(props: { readonly touch: TapeTouch; readonly onPress: () => void }): JSX.Element {
  const inside = (): JSX.Element => (
    <>
      <Show when={props.touch.mark}>{(mark) => <BakeMark mark={mark()} />}</Show>
      <span>{props.touch.time}</span>
    </>
  );
  return (
    <li class="tape-place" style={{ '--x': percent(props.touch.x) }}>
      <Show when={props.touch.opens} fallback={<b class="tape-ready">{inside()}</b>}>
        <Pressable
          class={props.touch.stays ? 'tape-touch tape-stays' : 'tape-touch'}
          name={props.touch.name}
          fresh={props.touch.name}
          onPress={() => props.onPress()}
        >
          {inside()}
        </Pressable>
      </Show>
    </li>
  );
}

function Lane(props: { readonly lane: TapeLane }): JSX.Element {
  const ends = () => ({
    '--from': percent(props.lane.from),
    '--lid': percent(props.lane.lid ?? props.lane.from),
    '--to': percent(props.lane.to),
  });
  return (
    <div class="tape-lane" data-side={props.lane.side} style={ends()}>
      <Show when={props.lane.lid !== null}>
        <i class="tape-lidded" />
      </Show>
      <i class="tape-open" />
      <span>{unbroken(props.lane.label)}</span>
    </div>
  );
}

function Row(props: {
  readonly row: TapeRow;
  readonly letters: number;
  readonly onTouch: (key: string) => void;
}): JSX.Element {
  const most = (of: readonly { readonly lines: readonly string[] }[]): number =>
    Math.max(0, ...of.map((one) => one.lines.length));
  const level = (n: 0 | 1) => props.row.notes.filter((note) => note.level === n);
  const names = (): number => Math.max(most(props.row.touches), most(level(0)));
  const words = (
    of: readonly { readonly x: number; readonly lines: readonly string[] }[],
    css: string,
    from = 0,
  ) => (
    <For each={of}>
      {({ x, lines }) => (
        <span class={css} style={{ '--x': percent(x), '--from': from }}>
          <For each={lines}>{(line) => <span>{unbroken(line)}</span>}</For>
        </span>
      )}
    </For>
  );
  return (
    <div class="tape-row">
      <Show when={props.row.day}>{(day) => <h2 class="tape-day">{day()}</h2>}</Show>
      <ol class="tape-boxes">
        <For each={props.row.touches}>
          {(touch) => <Box touch={touch} onPress={() => props.onTouch(touch.key)} />}
        </For>
      </ol>
      <div aria-hidden="true">
        <Rule row={props.row} letters={props.letters} />
        <div class="tape-under" style={{ '--lines': names() + most(level(1)) }}>
          {words(props.row.touches, 'tape-words tape-name')}
          {words(level(0), 'tape-words')}
          {words(level(1), 'tape-words', names())}
        </div>
        <For each={props.row.lanes}>{(lane) => <Lane lane={lane} />}</For>
      </div>
    </div>
  );
}

/**
 * A day’s bake on one ruled tape, a row a calendar day: each touch a box with its hour, a wait but its
 * ticks, where a dough is ready bars over the line, what is in the oven lanes under it.
 */
export function Tape(props: TapeProps): JSX.Element {
  let tape!: HTMLElement;
  const [letters, setLetters] = createSignal(60);
  const measure = (): void => {
    const size = Number.parseFloat(getComputedStyle(tape).fontSize);
    if (tape.clientWidth <= 0 || !(size > 0)) return;
    props.onRoom(setLetters(tape.clientWidth / (LETTER * size)));
  };
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(tape));
  onCleanup(() => observer?.disconnect());
  return (
    <section class="tape" aria-label={props.alt} ref={tape}>
      <For each={props.rows}>
        {(row) => <Row row={row} letters={letters()} onTouch={(key) => props.onTouch(key)} />}
      </For>
    </section>
  );
}
