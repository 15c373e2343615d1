import type { CircleRows, KeptPicture, Pictures } from '../../machines/ports.ts';
import { jpegOf } from '../adapters/pictures/saved.ts';
import { readCircle, rowOf, WAYS_ROW } from '../core/circle/read-circle.ts';
import type { Change } from '../core/circle/row.ts';
import { broughtIn } from '../core/circle/saved-circle.ts';
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

/** Brings in what a file has of the circle and this tablet has not; what undoes it. */
async function takeCircle(rows: CircleRows, saved: Change): Promise<() => Promise<void>> {
  const found = await rows.load();
  const { circle: here, gone } = readCircle(found);
  const { puts, ways } = broughtIn(here, saved, gone);
  const next = new Map<string, unknown>();
  // Nor is a row written over that cannot be read here.
  for (const { list, id, thing } of puts)
    if (!found.has(rowOf(list, id))) next.set(rowOf(list, id), thing);
  if (ways) next.set(WAYS_ROW, { ...here.ways, ...ways });
  await rows.write(next);
  return () => rows.write(new Map([...next.keys()].map((key) => [key, found.get(key) ?? null])));
}

/** Writes a file's pictures, circle and log, all or none, then what the kitchen bakes with, and opens the page anew. */
export async function takeFile(
  { records, equipment: found, pictures, circle }: LogFile,
  world: Pick<World, 'store' | 'pictures' | 'circle' | 'reload'>,
  { sound, readsOwn, savedAt }: Equipment,
  equip: (change: Partial<Equipment>) => void,
): Promise<void> {
  const undo: (() => Promise<void>)[] = [];
  try {
    if (pictures.length > 0) undo.push(await takePictures(await world.pictures(), pictures));
    if (circle !== null) undo.push(await takeCircle(await world.circle(), circle));
    await world.store.rewrite(records);
  } catch (cause) {
    for (const each of undo) await each();
    throw cause;
  }
  // How the calls are heard here, what reads aloud, and when the log was saved, is this tablet's own.
  if (found) equip({ ...found, sound, readsOwn, savedAt });
  world.reload();
}
