import type { Instant } from '../../core/units.ts';
import type { TapeMark, TapeWait } from './tape-parts.ts';

/** Everything in letters of the tape’s own words. Judgement, by eye. */
export const GUTTER = 4.4;
/** Between two of them, and between them and a touch’s name. */
const APART = 1.1;

export interface PlacedMark {
  readonly mark: TapeMark;
  readonly x: number;
  readonly width: number;
}
/** `level` 0: beside the names of touches; 1: under them. */
export interface PlacedNote {
  readonly lines: readonly string[];
  readonly x: number;
  readonly width: number;
  readonly level: 0 | 1;
}
export interface RowSpan {
  readonly from: Instant;
  readonly to: Instant;
}

export const widest = (lines: readonly string[]): number =>
  Math.max(0, ...lines.map((line) => line.length));

/** Two stretches that are free between touches: what ends a wait stands at the right of its words. */
interface Place {
  readonly from: number;
  readonly to: number;
}

/** Before the touch that ends a wait, or past the last one; null: not in this row. */
function placeOf(
  wait: RowSpan,
  { from, to }: RowSpan,
  marks: readonly PlacedMark[],
  room: number,
): Place | null {
  if (wait.to <= from || wait.from >= to) return null;
  const end = marks.findIndex(({ mark }) => mark.at === wait.to);
  const side = ({ x, mark }: PlacedMark, way: 1 | -1): number =>
    x + way * (widest(mark.lines) / 2 + APART);
  if (end < 0) return { from: side(marks.at(-1)!, 1), to: room };
  const before = marks[end - 1];
  return { from: before ? side(before, 1) : GUTTER, to: side(marks[end]!, -1) };
}

/** Under the names: as near to its place as those before it let it be. */
function under(
  { from, to }: Place,
  width: number,
  notes: readonly PlacedNote[],
  room: number,
): number | null {
  const free = Math.max(
    GUTTER,
    ...notes.filter(({ level }) => level === 1).map((one) => one.x + one.width / 2 + APART),
  );
  const x = Math.min(Math.max((from + to) / 2, free + width / 2), room - width / 2);
  return x - width / 2 < free - 1e-9 ? null : x;
}

/**
 * The words of waits under the line, none over another and each told once (`told` holds what was); what
 * has no room is in the table. `until`: who is away as the row begins, where that fits.
 */
export function notesOf(
  waits: readonly TapeWait[],
  span: RowSpan,
  marks: readonly PlacedMark[],
  { room, told, until }: { readonly room: number; told: Set<TapeWait>; until: string | null },
): PlacedNote[] {
  const wanted = waits
    .flatMap((wait) => {
      const place = told.has(wait) ? null : placeOf(wait, span, marks, room);
      return place === null ? [] : [{ wait, place }];
    })
    .sort((a, b) => a.place.from + a.place.to - b.place.from - b.place.to);
  const notes: PlacedNote[] = [];
  for (const { wait, place } of wanted) {
    const { lines } = wait;
    const width = widest(lines);
    const middle = (place.from + place.to) / 2;
    const isTaken = notes.some(
      (one) => one.level === 0 && Math.abs(one.x - middle) < (one.width + width) / 2 + APART,
    );
    const level = place.to - place.from >= width && !isTaken ? 0 : 1;
    const x = level === 0 ? middle : under(place, width, notes, room);
    if (x === null) continue;
    told.add(wait);
    notes.push({ lines, x, width, level });
  }
  if (until !== null) {
    const ends = GUTTER + until.length;
    const [first] = marks;
    const fits = (level: 0 | 1): boolean =>
      notes.every((one) => one.level !== level || one.x - one.width / 2 >= ends + APART);
    const level = ends + APART <= first!.x - widest(first!.mark.lines) / 2 && fits(0) ? 0 : 1;
    if (fits(level) && ends <= room)
      notes.unshift({ lines: [until], x: GUTTER + until.length / 2, width: until.length, level });
  }
  return notes;
}
