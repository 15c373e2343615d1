import type { KeepsakeRows } from '../../machines/ports.ts';
import type { HouseLog } from '../screens/house-log.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** What is said and kept of bakes. Rejects where it cannot be read. */
export function openKeepsakes(
  _rows: KeepsakeRows,
  _world: Pick<World, 'pictures' | 'holds' | 'clock' | 'ids'>,
  _tell: House['tell'],
): Promise<Omit<HouseLog, 'others'>> {
  return Promise.resolve({
    abouts: () => ({}),
    say: () => Promise.resolve('closed'),
    keepsakes: () => Promise.resolve([]),
    takePhoto: () => Promise.resolve('closed'),
    takeVoice: () => Promise.resolve('closed'),
    erase: () => Promise.resolve('closed'),
    eraseAll: () => Promise.resolve('closed'),
  });
}
