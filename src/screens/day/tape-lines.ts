import { MINUTE, type Instant } from '../../core/units.ts';
import {
  GUTTER,
  notesOf,
  widest,
  type PlacedMark,
  type PlacedNote,
  type RowSpan,
} from './tape-notes.ts';
import type { TapeMark, TapeWait } from './tape-parts.ts';

/** In letters of the tape’s own words. Judgement, by eye. A touch’s box, besides its hour. */
const BOX = 1.5;
const GAP = 0.45;
/** A long wait gets room for its ticks, and no more than so much of what is left over. */
const LONG = 2;
const MORE = 7;
/** Before the first touch of a day whose night goes on, and past the last. */
const EDGE = 2.6;

/** From here on a wait has ticks. */
const WAIT = 60 * MINUTE;

/** A row’s touches and notes, in letters. */
export interface TapeLine {
  readonly day: Instant | null;
  readonly from: Instant;
  readonly to: Instant;
  readonly marks: readonly PlacedMark[];
  readonly notes: readonly PlacedNote[];
  /** Whether the time before its first touch, and past its last, is drawn. */
  readonly leads: boolean;
  readonly tails: boolean;
}

const widthOf = ({ time, lines, mark }: TapeMark): number =>
  Math.max(time.length + BOX + (mark === null ? 0 : 1.6), widest(lines));
const isLong = (a: TapeMark, b: TapeMark): boolean => b.at - a.end >= WAIT;

interface Draft {
  readonly day: Instant | null;
  readonly marks: readonly TapeMark[];
  /** A day that is told already goes on. */
  readonly leads: boolean;
}

const least = (a: TapeMark, b: TapeMark): number =>
  (widthOf(a) + widthOf(b)) / 2 + GAP + (isLong(a, b) ? LONG : 0);

const startOf = ({ marks, leads }: Draft): number =>
  GUTTER + (leads ? EDGE : 0) + widthOf(marks[0]!) / 2;

/** Touches in rows: each calendar day its own, broken where it is longer than the room. */
function broken(marks: readonly TapeMark[], midnight: (at: Instant) => Instant, room: number) {
  const rows: Draft[] = [];
  let x = 0;
  for (const mark of marks) {
    const row = rows.at(-1);
    const before = row?.marks.at(-1);
    const day = midnight(mark.at);
    const next = before ? x + least(before, mark) : 0;
    if (row && before && midnight(before.at) === day && next + widthOf(mark) / 2 <= room) {
      rows[rows.length - 1] = { ...row, marks: [...row.marks, mark] };
      x = next;
      continue;
    }
    const isSame = before !== undefined && midnight(before.at) === day;
    const draft = { day: isSame ? null : day, marks: [mark], leads: rows.length > 0 };
    rows.push(draft);
    x = startOf(draft);
  }
  return rows;
}

/** Where each touch of a row stands; what is left over goes to its long waits. */
function placed(row: Draft, room: number, tails: boolean): PlacedMark[] {
  const { marks } = row;
  const steps = marks.slice(1).map((mark, i) => least(marks[i]!, mark));
  const long = marks.slice(1).filter((mark, i) => isLong(marks[i]!, mark)).length;
  const ends =
    startOf(row) +
    steps.reduce((sum, step) => sum + step, 0) +
    widthOf(marks.at(-1)!) / 2 +
    (tails ? EDGE : 0);
  const more = long === 0 ? 0 : Math.min(MORE, Math.max(0, room - ends) / long);
  let x = startOf(row);
  return marks.map((mark, i) => {
    if (i > 0) x += steps[i - 1]! + (isLong(marks[i - 1]!, mark) ? more : 0);
    return { mark, x, width: widthOf(mark) };
  });
}

const DAY = 24 * 60 * MINUTE;

/** All rows of a plan, `room` letters wide. */
export function linesOf(
  marks: readonly TapeMark[],
  waits: readonly TapeWait[],
  midnight: (at: Instant) => Instant,
  room: number,
  untilAway: (span: RowSpan) => string | null,
): TapeLine[] {
  const rows = broken(marks, midnight, room);
  const told = new Set<TapeWait>();
  return rows.map((row, i) => {
    const before = rows[i - 1]?.marks.at(-1);
    const after = rows[i + 1];
    const first = row.marks[0]!;
    const from = before === undefined ? first.at : (row.day ?? before.at);
    // Twelve hours past the middle of a day is the next one, whatever its length.
    const next = midnight(midnight(first.at) + 1.5 * DAY);
    const to =
      after === undefined ? row.marks.at(-1)!.at : after.day === null ? after.marks[0]!.at : next;
    const tails = after !== undefined;
    const at = placed(row, room, tails);
    const until = row.day !== null && row.leads ? untilAway({ from, to }) : null;
    return {
      day: row.day,
      from,
      to,
      marks: at,
      notes: notesOf(waits, { from, to }, at, { room, told, until }),
      leads: row.leads,
      tails,
    };
  });
}
