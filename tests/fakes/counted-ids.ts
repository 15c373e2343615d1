import type { Ids } from '../../src/adapters/ids.ts';

/** Ids that count: counter-1, counter-2 … */
export function makeCountedIds(device = 'counter'): Ids {
  let count = 0;
  return { device, next: () => `${device}-${(count += 1)}` };
}
