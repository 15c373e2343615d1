import { createMemo, type Accessor } from 'solid-js';
import { makeBakeList, type BakeList, type ListedBake } from '../../core/log/bake-list.ts';
import { mergeBakes } from '../../core/log/merge-bakes.ts';
import type { LogRecord } from '../../core/records/record.ts';
import type { HouseLog } from '../house-log.ts';
import type { House } from '../house.ts';
import { logsOf } from './records-of.ts';

/** What was read of a kitchen's own log is kept while its house stands: the next row is all there is to read. */
const own = new WeakMap<House['records'], ReturnType<typeof makeBakeList>>();
/** Logs of other tablets are read whole, and once. */
const others = new WeakMap<readonly LogRecord[], BakeList>();

const ownList = ({ records }: Pick<House, 'records'>): BakeList => {
  const read = own.get(records) ?? makeBakeList();
  own.set(records, read);
  return read(records());
};
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
