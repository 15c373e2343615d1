import { exportLog } from '../adapters/backup.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { LogRecord } from '../core/records/record.ts';
import { pictureTold } from '../core/speech/en/picture.ts';
import type { Told } from '../screens/house.ts';
import type { World } from './world.ts';

/** The log and the pictures as one file. Pictures that cannot be had keep nobody from the log: it is told. */
export async function saveFile(
  world: Pick<World, 'pictures'>,
  records: readonly LogRecord[],
  equipment: Equipment,
  tell: (notice: Told) => void,
): Promise<void> {
  const pictures = await world
    .pictures()
    .then((its) => its.load())
    .catch(() => null);
  exportLog(records, equipment, pictures ?? new Map());
  if (pictures === null) tell({ id: 'pictures', text: pictureTold.leftOut, action: null });
}
