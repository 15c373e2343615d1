import { createSignal } from 'solid-js';
import { StoreError, type CircleRows } from '../../machines/ports.ts';
import { BEFORE_ROW, goneRow, readCircle, rowOf, WAYS_ROW } from '../core/circle/read-circle.ts';
import { changed, inverse, type Change } from '../core/circle/row.ts';
import { circleTold } from '../core/speech/words/circle.ts';
import { fill } from '../core/speech/fill.ts';
import type { HouseCircle, NotWritten } from '../screens/house-circle.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/**
 * The circle of a house. Rejects with a StoreError where it cannot be read: nothing may be written over
 * then. Rows that make no sense are left out and told, without what stands in them.
 *
 * @param holds false in a page that only shows the kitchen: nothing is written there
 */
export async function openCircle(
  rows: CircleRows,
  { holds, clock, ids }: Pick<World, 'holds' | 'clock' | 'ids'>,
  tell: House['tell'],
): Promise<HouseCircle> {
  const read = readCircle(await rows.load());
  const [circle, setCircle] = createSignal(read.circle);
  const [before, setBefore] = createSignal(read.before);
  const [first] = read.misread;
  if (first) {
    const text = fill(circleTold.misread, { count: read.misread.length, ...first });
    tell({ id: 'circle', text, action: null });
  }

  // One after the other: each is a change of what the one before it left.
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(deed: () => Promise<T>): Promise<T> => {
    const next = last.then(deed);
    last = next.catch(() => undefined);
    return next;
  };
  const put = async (
    change: Change,
    back: Change | null,
    besides: readonly (readonly [string, unknown])[] = [],
  ): Promise<NotWritten | null> => {
    if (!holds) return 'closed';
    const next = changed(circle(), change);
    try {
      await rows.write(
        new Map<string, unknown>([
          ...change.puts.map(({ list, id, thing }) => [rowOf(list, id), thing] as const),
          ...(change.ways ? [[WAYS_ROW, next.ways] as const] : []),
          [BEFORE_ROW, back],
          ...besides,
        ]),
      );
    } catch (error) {
      return error instanceof StoreError && error.trouble === 'full' ? 'full' : 'closed';
    }
    setCircle(next);
    setBefore(back);
    return null;
  };
  return {
    circle,
    write: (change) => inTurn(() => put(change, inverse(circle(), change))),
    erase: (change) =>
      inTurn(() => {
        const who = change.puts.filter(({ list, thing }) => list === 'neighbours' && !thing);
        return put(
          change,
          null,
          who.map(({ id }) => [goneRow(id), true] as const),
        );
      }),
    canTakeBack: () => before() !== null,
    takeBack: () =>
      inTurn(() => {
        const back = before();
        return back === null ? Promise.resolve(null) : put(back, null);
      }),
    // The disk gives rows back by their keys: in the order in which they were made.
    freshId: () => `${clock.now().toString(36).padStart(9, '0')}-${ids.next()}`,
  };
}
