import { benchSheet as words } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';

/** One thing to do: what, and how much or how long of it. */
export interface BenchLine {
  readonly what: string;
  readonly much: string;
}
export interface BenchList {
  readonly title: string;
  readonly lines: readonly BenchLine[];
}
/** One page: its columns, two where it has any, and what stands under them. */
export interface BenchPage {
  readonly columns: readonly (readonly BenchList[])[];
  readonly notes: readonly string[];
}

/**
 * What stands on a page of several, in real millimetres as BenchSheet.css draws the close way; a little
 * more than measured, so that nothing goes over the edge of a Letter sheet (255 mm inside its margins).
 */
const ROOM = 200;
const TITLE = 9.5;
const LINE = 4.8;
const WEIGHT = 5.2;
const AROUND = 1.8;
/** A column beside its box and gaps, and one letter of a name, a weight and a note. */
const COLUMN = 79;
const LETTER = { what: 2.2, much: 3 } as const;
/** A further line of a name, of a line that holds one. */
const BROKEN = 0.6;
const NOTE = { line: 4.4, letters: 85 } as const;

/** Lines of a name that is broken beside its weight, in letters of so many times the size. */
const brokenIn = ({ what, much }: BenchLine, size = 1): number => {
  const room = COLUMN - LETTER.much * size * much.length;
  return Math.ceil(what.length / Math.max(6, Math.floor(room / (LETTER.what * size))));
};
const heightOf = (line: BenchLine): number => Math.max(WEIGHT, brokenIn(line) * LINE) + AROUND;
const notesHeight = (notes: readonly string[]): number =>
  notes.reduce((sum, note) => sum + Math.ceil(note.length / NOTE.letters) * NOTE.line, 0);
const columnHeight = (lists: readonly BenchList[]): number =>
  lists.reduce(
    (sum, { lines }) => sum + TITLE + lines.reduce((all, line) => all + heightOf(line), 0),
    0,
  );

/** Lists one under the other in columns; one that goes on in the next has its title there again. */
function inColumns(lists: readonly BenchList[]): BenchList[][] {
  const columns: BenchList[][] = [[]];
  for (const { title, lines } of lists) {
    let open = false;
    for (const [i, line] of lines.entries()) {
      const column = columns.at(-1)!;
      const needs = heightOf(line) + (open ? 0 : TITLE);
      const isFull = column.length > 0 && columnHeight(column) + needs > ROOM;
      if (isFull) columns.push([]);
      if (isFull || !open) {
        const named = i === 0 ? title : fill(words.goesOn, { name: title });
        columns.at(-1)!.push({ title: named, lines: [line] });
        open = true;
        continue;
      }
      const last = column.pop()!;
      column.push({ ...last, lines: [...last.lines, line] });
    }
  }
  return columns;
}

/** Weighing, steps and notes on as many pages as they need; the notes under the last columns, or behind them. */
export function inPages(
  lists: readonly BenchList[],
  steps: BenchList,
  notes: readonly string[],
): readonly BenchPage[] {
  const columns = [...inColumns(lists), ...inColumns([steps])];
  const pages: BenchPage[] = [];
  for (let i = 0; i < columns.length; i += 2)
    pages.push({ columns: columns.slice(i, i + 2), notes: [] });
  const last = pages.at(-1)!;
  const tallest = Math.max(...last.columns.map(columnHeight));
  return tallest + notesHeight(notes) <= ROOM
    ? [...pages.slice(0, -1), { ...last, notes }]
    : [...pages, { columns: [], notes }];
}

/**
 * What lists take of a page that has all of them, in lines of one: a name that is broken takes more.
 * `size`: of their letters, times those of the close way.
 */
export const linesIn = (lists: readonly BenchList[], size: number): number =>
  lines(lists).reduce((sum, line) => sum + 1 + (brokenIn(line, size) - 1) * BROKEN, lists.length);

const lines = (lists: readonly BenchList[]): readonly BenchLine[] =>
  lists.flatMap((list) => list.lines);
