import type { Span } from '../../core/day/plan/types.ts';
import { tapeNotes } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { showAway } from '../../core/speech/show-away.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { TapeLane, TapeRow, TapeStretch } from '../../parts/tape-shown.ts';
import type { DayShown, ReadDay } from './day-shown.ts';
import { linesOf, type TapeLine } from './tape-lines.ts';
import { GUTTER, type RowSpan } from './tape-notes.ts';
import { loadsOf, marksOf, waitsOf, type TapeLoad, type TapeWait } from './tape-parts.ts';

/** Between two ticks, in letters, and how long each may stand for. */
const TICK = 0.42;
const STEPS = [30, 60, 120, 240].map((minutes) => minutes * MINUTE);
/** A shorter wait has none. */
const SHORT = 60 * MINUTE;
/** Clear of a touch, and of a lane. */
const CLEAR = 0.6;

interface Knot {
  readonly at: Instant;
  readonly x: number;
}

/** Where a row’s instants stand, in letters: straight from touch to touch. */
const knotsOf = ({ from, to, marks, leads, tails }: TapeLine, room: number): Knot[] => [
  ...(leads ? [{ at: from, x: GUTTER }] : []),
  ...marks.map(({ mark, x }) => ({ at: mark.at, x })),
  ...(tails ? [{ at: to, x: room }] : []),
];

/** Cut to the row. */
function placeOf(knots: readonly Knot[], at: Instant): number {
  const after = knots.findIndex((knot) => knot.at >= at);
  if (after === 0) return knots[0]!.x;
  if (after < 0) return knots.at(-1)!.x;
  const [a, b] = [knots[after - 1]!, knots[after]!];
  return a.x + ((b.x - a.x) * (at - a.at)) / (b.at - a.at);
}

function ticksOf(knots: readonly Knot[], midnight: Instant, room: number): TapeRow['ticks'] {
  return knots.slice(1).flatMap((to, i) => {
    const from = knots[i]!;
    const [long, wide] = [to.at - from.at, to.x - from.x - 2 * CLEAR];
    if (long < SHORT || wide <= 0) return [];
    const step = STEPS.find((one) => (one / long) * (to.x - from.x) >= TICK) ?? STEPS.at(-1)!;
    const ticks: { x: number; long: boolean }[] = [];
    const first = Math.ceil((from.at - midnight) / step);
    for (let n = first; midnight + n * step < to.at; n += 1) {
      const x = placeOf([from, to], midnight + n * step);
      if (x > from.x + CLEAR && x < to.x - CLEAR) ticks.push({ x: x / room, long: n % 2 === 0 });
    }
    return ticks;
  });
}

/** The parts of spans that lie in a row. */
function stretches(
  spans: readonly { readonly from: Instant; readonly to: Instant }[],
  knots: readonly Knot[],
  room: number,
): TapeStretch[] {
  const [first, last] = [knots[0]!.at, knots.at(-1)!.at];
  return spans
    .filter(({ from, to }) => to > first && from < last)
    .map(({ from, to }) => ({ from: placeOf(knots, from) / room, to: placeOf(knots, to) / room }))
    .filter(({ from, to }) => to > from);
}

function lanesOf(
  loads: readonly TapeLoad[],
  { marks }: TapeLine,
  knots: readonly Knot[],
  room: number,
): TapeLane[] {
  return loads
    .filter(({ at }) => marks.some(({ mark }) => mark.at === at))
    .map(({ at, lid, out, label }) => {
      const [from, to] = [placeOf(knots, at), placeOf(knots, out)];
      return {
        from: from / room,
        lid: lid === null ? null : placeOf(knots, lid) / room,
        to: to / room,
        label,
        side:
          to + label.length + CLEAR <= room
            ? ('right' as const)
            : from - label.length - CLEAR >= 0
              ? ('left' as const)
              : ('under' as const),
      };
    });
}

/** Until when nobody is there as a day begins. */
function untilAway({ from, to }: RowSpan, blocked: readonly Span[], read: ReadDay): string | null {
  const span = blocked.find((one) => one.name && one.from <= from && one.to > from && one.to <= to);
  return span
    ? fill(tapeNotes.away, { name: showAway(span.name!), time: read.hour(span.to) })
    : null;
}

/** A dough that is taken is no longer waited for: its bars end half-way to the next touch. */
function windowsOf(
  waits: readonly TapeWait[],
  { marks }: TapeLine,
  knots: readonly Knot[],
  room: number,
): TapeStretch[] {
  return waits.flatMap(({ to, window }) => {
    const end = marks.findIndex(({ mark }) => mark.at === to);
    const next = marks[end + 1];
    const most = end >= 0 && next ? (marks[end]!.x + next.x) / 2 / room : 1;
    return stretches(window ? [window] : [], knots, room)
      .map((one) => ({ from: one.from, to: Math.min(one.to, most) }))
      .filter((one) => one.to > one.from);
  });
}

/**
 * A plan as a tape: a row a calendar day, in which touches set the spacing and a wait is but its ticks.
 * `room`: letters of its own words that a row is wide. What is 0–1 is of that width.
 */
export function tapeView(day: DayShown, read: ReadDay, room: number): TapeRow[] {
  const waits = waitsOf(day, read);
  const loads = loadsOf(day, read);
  const away = (span: RowSpan) => untilAway(span, day.blocked, read);
  const lines = linesOf(marksOf(day, read), waits, read.midnight, room, away);
  return lines.map((line): TapeRow => {
    const knots = knotsOf(line, room);
    const ends = line.marks.at(-1)!;
    return {
      day: line.day === null ? null : read.day(line.day),
      touches: line.marks.map(({ mark: { at: _, end: __, ...mark }, x }) => ({
        ...mark,
        x: x / room,
      })),
      ticks: ticksOf(knots, read.midnight(line.marks[0]!.mark.at), room),
      windows: windowsOf(waits, line, knots, room),
      away: stretches(day.blocked, knots, room),
      notes: line.notes.map(({ lines, x, level }) => ({ lines, x: x / room, level })),
      lanes: lanesOf(loads, line, knots, room),
      line: {
        from: (line.leads ? GUTTER : line.marks[0]!.x) / room,
        to: line.tails ? 1 : Math.min(1, (ends.x + ends.width / 2) / room),
      },
    };
  });
}
