import type { CircleRows, Stop } from '../../../machines/ports.ts';
import { makeRowStore } from '../row-store.ts';

/**
 * The circle on the disk, a row a thing: IndexedDB database `name`-circle beside the log's. Names may be
 * erased, a log's rows may not; and a store in the log's own database would be a new version of it, which a
 * page with an older program could not open.
 */
export const makeCircleStore = (name = 'loafward'): CircleRows & { readonly close: Stop } =>
  makeRowStore(`${name}-circle`, 'circle');
