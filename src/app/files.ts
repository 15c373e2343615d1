import type { Equipment } from '../core/kitchen/equipment.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

export interface FilesParts {
  readonly records: () => readonly LogRecord[];
  readonly equipment: () => Equipment;
  readonly equip: (change: Partial<Equipment>) => void;
}

/** The log as a file, out and in. What does either comes when it is first wanted. */
export const makeFiles = (
  world: World,
  { records, equipment, equip }: FilesParts,
): Pick<House, 'saveAsFile' | 'handOn' | 'sheets' | 'readFile' | 'takeFile'> => ({
  saveAsFile() {
    void import('../adapters/backup.ts').then(({ exportLog }) => {
      exportLog(records(), equipment());
      equip({ savedAt: world.clock.now() });
    });
  },
  handOn: async (file) => (await import('../adapters/share-file.ts')).shareFile(file),
  sheets: async () =>
    (await import('../adapters/sheets/make-sheets.ts')).makeSheets(`${location.origin}/`),
  readFile: async (text) => (await import('./read-file.ts')).readFile(text, records()),
  takeFile: async (file) =>
    world.holds
      ? (await import('./take-file.ts')).takeFile(file, world, equipment(), equip)
      : undefined,
});
