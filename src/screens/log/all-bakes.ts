import { createMemo, untrack, type Accessor } from 'solid-js';
import { makeBakeList, type BakeList, type ListedBake } from '../../core/log/bake-list.ts';
import { mergeBakes } from '../../core/log/merge-bakes.ts';
import type { LogRecord } from '../../core/records/record.ts';
import type { HouseLog } from '../house-log.ts';
import type { House } from '../house.ts';
import { logsOf } from './records-of.ts';

/** What was read of a kitchen's own log is kept while its house stands: the next row is all there is to read. */
const own = new WeakMap<
  House['records'],
  { readonly read: ReturnType<typeof makeBakeList>; rows: number }
>();
/** Logs of other tablets are read whole, and once. */
const others = new WeakMap<readonly LogRecord[], BakeList>();

const readOwn = (of: House['records'], rows: readonly LogRecord[]): BakeList => {
  const its = own.get(of) ?? { read: makeBakeList(), rows: 0 };
  own.set(of, its);
  its.rows = rows.length;
  return its.read(rows);
};
const ownList = ({ records }: Pick<House, 'records'>): BakeList => readOwn(records, records());

/**
 * Reads the first rows of the kitchen's log before its list is wanted, where they were not read; whether
 * there are more.
 */
export function readAhead({ records }: Pick<House, 'records'>, rows: number): boolean {
  const all = untrack(records);
  if (rows > (own.get(records)?.rows ?? 0)) readOwn(records, all.slice(0, rows));
  return rows < all.length;
}

const otherList = (records: readonly LogRecord[]): BakeList => {
  const list = others.get(records) ?? makeBakeList()(records);
  others.set(records, list);
  return list;
};

/**
 * The bakes of this kitchen and of other tablets' logs, each once, the latest begun first. Lines keep
 * their identity, and so does the list where a new row says nothing of any bake.
 */
export function makeAllBakes(
  house: Pick<House, 'records' | 'rehearsal'>,
  log: Pick<HouseLog, 'others'>,
): Accessor<readonly ListedBake[]> {
  const lists = createMemo(
    () => {
      const [, ...theirs] = logsOf(house, log);
      return [ownList(house), ...theirs.map(otherList)];
    },
    undefined,
    { equals: (a, b) => a.length === b.length && a.every((list, i) => list === b[i]) },
  );
  return createMemo(() => mergeBakes(lists()));
}
