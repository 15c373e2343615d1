import type { Misread } from '../formula/read-fields.ts';
import { CIRCLE, type Circle } from './circle.ts';
import { readChange, readThing, readWays } from './read-row.ts';
import { LISTS, type Change, type ListName, type Thing } from './row.ts';

/** The rows that are no thing of a list: how the circle is run, and what takes the last change back. */
export const WAYS_ROW = 'ways';
export const BEFORE_ROW = 'before';
/** One who was erased, by their id alone: no saved file brings them back. */
export const goneRow = (id: string): string => `${GONE}${id}`;
const GONE = 'gone:';

/**
 * The row of a thing.
 *
 * @example
 * rowOf('orders', 'a-1') // → 'orders:a-1'
 */
export const rowOf = (list: ListName, id: string): string => `${list}:${id}`;

/** A circle off the disk. What cannot be read is left out of it, and named. */
export interface CircleRead {
  readonly circle: Circle;
  readonly before: Change | null;
  readonly misread: readonly Misread[];
  /** Those who were erased, by their ids. */
  readonly gone: ReadonlySet<string>;
}

/** All rows as they are found, each under its key. */
export function readCircle(rows: ReadonlyMap<unknown, unknown>): CircleRead {
  const misread: Misread[] = [];
  const gone = new Set<string>();
  const lists: { [L in ListName]: Thing<L>[] } = {
    neighbours: [],
    orders: [],
    standing: [],
    ingredients: [],
  };
  let before: Change | null = null;
  let ways = CIRCLE.ways;
  const put = <L extends ListName>(list: L, key: string, row: unknown): void => {
    const { thing, reason } = readThing(list, row);
    if (reason !== null) return void misread.push(reason);
    if (rowOf(list, thing.id) === key) return void lists[list].push(thing as never);
    misread.push({ path: `${list}.id`, expected: 'the id it stands under', got: 'another' });
  };
  for (const [key, row] of rows) {
    const list = typeof key === 'string' && LISTS.find((one) => key.startsWith(`${one}:`));
    if (list) put(list, key as string, row);
    else if (key === WAYS_ROW) {
      const read = readWays(row);
      ways = read.ways;
      misread.push(...read.misread);
    } else if (key === BEFORE_ROW) {
      const { change, reason } = readChange(row);
      before = change;
      if (reason !== null) misread.push(reason);
    } else if (typeof key === 'string' && key.startsWith(GONE)) gone.add(key.slice(GONE.length));
    else misread.push({ path: 'row', expected: 'a row of the circle', got: 'another' });
  }
  return { circle: { ...lists, ways }, before, misread, gone };
}
