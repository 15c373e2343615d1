import type { KeptPicture, Pictures } from '../../machines/ports.ts';
import { jpegOf } from '../adapters/pictures/saved.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { SavedPicture } from '../core/pictures/saved-picture.ts';
import type { LogFile } from '../screens/house.ts';
import type { World } from './world.ts';

/** Writes a file's pictures, each in the place of the one that is here; what undoes it. */
async function takePictures(
  { load, write }: Pictures,
  saved: readonly SavedPicture[],
): Promise<() => Promise<void>> {
  const here = await load();
  const was = new Map<string, KeptPicture | null>();
  const rows = new Map<string, KeptPicture>();
  for (const one of saved) {
    const row = here.get(one.picture) ?? null;
    was.set(one.picture, row);
    rows.set(one.picture, { now: jpegOf(one), before: row?.now ?? null });
  }
  await write(rows);
  return () => write(was);
}

/** Writes a file's pictures and log, all or none, then what the kitchen bakes with, and opens the page anew. */
export async function takeFile(
  { records, equipment: found, pictures }: LogFile,
  world: Pick<World, 'store' | 'pictures' | 'reload'>,
  { sound, readsOwn, savedAt }: Equipment,
  equip: (change: Partial<Equipment>) => void,
): Promise<void> {
  const undo = pictures.length > 0 ? await takePictures(await world.pictures(), pictures) : null;
  try {
    await world.store.rewrite(records);
  } catch (cause) {
    await undo?.();
    throw cause;
  }
  // How the calls are heard here, what reads aloud, and when the log was saved, is this tablet's own.
  if (found) equip({ ...found, sound, readsOwn, savedAt });
  world.reload();
}
