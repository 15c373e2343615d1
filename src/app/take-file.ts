import {
  StoreError,
  type CircleRows,
  type KeptPicture,
  type Pictures,
} from '../../machines/ports.ts';
import { jpegOf } from '../adapters/pictures/saved.ts';
import { readCircle, rowOf, WAYS_ROW } from '../core/circle/read-circle.ts';
import type { Change } from '../core/circle/row.ts';
import { broughtIn } from '../core/circle/saved-circle.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { holdsNone, type SavedKeepsakes } from '../core/log/saved-keepsakes.ts';
import type { SavedPicture } from '../core/pictures/saved-picture.ts';
import type { Log } from '../core/records/merge-logs.ts';
import type { LogFile } from '../screens/house.ts';
import { incoming } from './incoming.ts';
import { takeKeepsakes } from './keepsake-files.ts';
import { takeOthers } from './take-logs.ts';
import type { World } from './world.ts';

const sameBytes = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, i) => byte === other[i]);

/**
 * Writes a file's pictures; what undoes it.
 *
 * @param over each in the place of the one that is here; else only where there is none
 */
async function takePictures(
  { load, write }: Pictures,
  saved: readonly SavedPicture[],
  over: boolean,
): Promise<() => Promise<void>> {
  const here = await load();
  const was = new Map<string, KeptPicture | null>();
  const rows = new Map<string, KeptPicture>();
  for (const one of saved) {
    const row = here.get(one.picture) ?? null;
    const [now, before] = [jpegOf(one), row?.now ?? null];
    if (before !== null && (!over || sameBytes(now, before))) continue;
    was.set(one.picture, row);
    rows.set(one.picture, { now, before });
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

/** What is said of bakes, but who of those ate it that were erased here. */
const withoutThose = (keepsakes: SavedKeepsakes, gone: ReadonlySet<string>): SavedKeepsakes => ({
  ...keepsakes,
  said: new Map(
    [...keepsakes.said].map(([start, { about, erased }]) => {
      const ate = about.ate.filter((who) => !gone.has(who));
      return [start, { about: { ...about, ate }, erased }] as const;
    }),
  ),
});

type Writes = Pick<World, 'store' | 'pictures' | 'circle' | 'keepsakes' | 'otherLogs' | 'reload'>;

/** All that is beside the kitchen's own log, each in a database of its own; `undo` gets what takes it back. */
async function takeBeside(
  { pictures, circle, keepsakes, comes }: LogFile,
  world: Writes,
  undo: (() => Promise<void>)[],
): Promise<void> {
  // Where the log is not gone on with, the breads here have the pictures that were taken here.
  const over = comes === 'all' || comes === 'goesOn';
  if (pictures.length > 0) undo.push(await takePictures(await world.pictures(), pictures, over));
  if (circle !== null) undo.push(await takeCircle(await world.circle(), circle));
  if (holdsNone(keepsakes)) return;
  const { gone } = readCircle(await (await world.circle()).load());
  undo.push(await takeKeepsakes(await world.keepsakes(), withoutThose(keepsakes, gone)));
}

/**
 * Writes all that a file brings, or none of it, then what the kitchen bakes with where its log is gone on with,
 * and opens the page anew.
 *
 * @param here the kitchen's own log as it is now: it may have gone on since the file was read
 */
export async function takeFile(
  file: LogFile,
  world: Writes,
  here: Log,
  { sound, readsOwn, ear, savedAt }: Equipment,
  equip: (change: Partial<Equipment>) => void,
): Promise<void> {
  const otherLogs = await world.otherLogs();
  const found = await incoming(file, here, otherLogs);
  const { merged } = found;
  if (merged.logs === null || found.comes !== file.comes) throw new StoreError('taken');
  const undo: (() => Promise<void>)[] = [];
  try {
    await takeBeside(file, world, undo);
    undo.push(await takeOthers(otherLogs, merged.logs.others, found));
    if (merged.goesOn) await world.store.rewrite(file.records);
  } catch (cause) {
    await Promise.allSettled(undo.toReversed().map((each) => each()));
    throw cause;
  }
  // How the calls are heard here, what reads aloud, what listens, and when the log was saved, is this tablet's own.
  if (merged.goesOn && file.equipment) equip({ ...file.equipment, sound, readsOwn, ear, savedAt });
  world.reload();
}
