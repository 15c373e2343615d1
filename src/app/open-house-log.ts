import type { KeepsakeRows, OtherLogs } from '../../machines/ports.ts';
import type { HouseLog } from '../screens/house-log.ts';
import type { House } from '../screens/house.ts';
import { openKeepsakes } from './open-keepsakes.ts';
import { readOthers } from './read-others.ts';
import type { World } from './world.ts';

/**
 * What the Log has beside the kitchen's records. Rejects with a StoreError where it cannot be read: nothing
 * may be written over then. What makes no sense is left out and told.
 */
export async function openHouseLog(
  world: Pick<World, 'pictures' | 'spokenNotes' | 'holds' | 'clock' | 'ids'>,
  keepsakes: KeepsakeRows,
  others: OtherLogs,
  tell: House['tell'],
): Promise<HouseLog> {
  const [kept, read] = await Promise.all([
    openKeepsakes(keepsakes, world, tell),
    others.load().then((rows) => readOthers(rows, tell)),
  ]);
  return { ...kept, others: () => read };
}
