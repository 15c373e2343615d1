import type { Equipment } from '../core/kitchen/equipment.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { House, Told } from '../screens/house.ts';
import { laterCircle } from './later-circle.ts';
import { laterLog } from './later-log.ts';
import { laterPictures } from './later-pictures.ts';
import type { World } from './world.ts';

export interface FilesParts {
  readonly records: () => readonly LogRecord[];
  readonly equipment: () => Equipment;
  readonly equip: (change: Partial<Equipment>) => void;
  readonly tell: (notice: Told) => void;
}

/** All of it as a file, out and in, and what is beside the log. What does either comes when it is first wanted. */
export const makeFiles = (
  world: World,
  { records, equipment, equip, tell }: FilesParts,
): Pick<
  House,
  'saveAsFile' | 'handOn' | 'sheets' | 'readFile' | 'takeFile' | 'pictures' | 'circle' | 'log'
> => ({
  pictures: laterPictures(world),
  circle: laterCircle(world, tell),
  log: laterLog(world, tell),
  saveAsFile(names = false) {
    void import('./save-file.ts').then(async ({ saveFile }) => {
      await saveFile(world, records(), equipment(), names, tell);
      equip({ savedAt: world.clock.now() });
    });
  },
  handOn: async (file) => (await import('../adapters/share-file.ts')).shareFile(file),
  sheets: async () =>
    (await import('../adapters/sheets/make-sheets.ts')).makeSheets(`${location.origin}/`),
  readFile: async (text) => (await import('./read-file.ts')).readFile(text, records(), world),
  takeFile: async (file) =>
    world.holds
      ? (await import('./take-file.ts')).takeFile(file, world, records(), equipment(), equip)
      : undefined,
});
