import type { Equipment } from '../core/kitchen/equipment.ts';
import type { LogFile } from '../screens/house.ts';
import type { World } from './world.ts';

/** Writes a file's log in one go, then what the kitchen bakes with, and opens the page anew. */
export async function takeFile(
  { records, equipment: found }: LogFile,
  world: Pick<World, 'store' | 'reload'>,
  { sound, readsOwn, savedAt }: Equipment,
  equip: (change: Partial<Equipment>) => void,
): Promise<void> {
  await world.store.rewrite(records);
  // How the calls are heard here, what reads aloud, and when the log was saved, is this tablet's own.
  if (found) equip({ ...found, sound, readsOwn, savedAt });
  world.reload();
}
