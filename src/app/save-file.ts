import { exportLog } from '../adapters/backup.ts';
import { readCircle } from '../core/circle/read-circle.ts';
import { savedCircle } from '../core/circle/saved-circle.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { LogRecord } from '../core/records/record.ts';
import { circleTold } from '../core/speech/en/circle.ts';
import { pictureTold } from '../core/speech/en/picture.ts';
import type { Told } from '../screens/house.ts';
import type { World } from './world.ts';

/**
 * The log, the pictures and the circle as one file. Pictures or a circle that cannot be had keep nobody from
 * the log: it is told. `names`: with those who have bread; else they have marks there.
 */
export async function saveFile(
  world: Pick<World, 'pictures' | 'circle'>,
  records: readonly LogRecord[],
  equipment: Equipment,
  names: boolean,
  tell: (notice: Told) => void,
): Promise<void> {
  const pictures = await world
    .pictures()
    .then((its) => its.load())
    .catch(() => null);
  const circle = await world
    .circle()
    .then((its) => its.load())
    .then((rows) => savedCircle(readCircle(rows).circle, names))
    .catch(() => null);
  exportLog(records, equipment, pictures ?? new Map(), circle ?? []);
  if (pictures === null) tell({ id: 'pictures', text: pictureTold.leftOut, action: null });
  if (circle === null) tell({ id: 'circle', text: circleTold.leftOut, action: null });
}
