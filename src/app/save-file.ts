import { exportFile } from '../adapters/backup.ts';
import { toSaved } from '../adapters/pictures/saved.ts';
import { longSum } from '../adapters/sum.ts';
import { readCircle } from '../core/circle/read-circle.ts';
import { savedCircle } from '../core/circle/saved-circle.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { fileBody, headOf } from '../core/records/log-file.ts';
import type { Log } from '../core/records/merge-logs.ts';
import { circleTold } from '../core/speech/words/circle.ts';
import { pictureTold } from '../core/speech/words/picture.ts';
import { saveAFile } from '../core/speech/words/save-a-file.ts';
import type { Told } from '../screens/house.ts';
import { keepsakeLines } from './keepsake-files.ts';
import { readOtherLogs } from './read-others.ts';
import type { World } from './world.ts';

type Read = Pick<World, 'pictures' | 'circle' | 'keepsakes' | 'otherLogs'>;

/** Null: it cannot be had. */
const orNull = <T>(reading: Promise<T>): Promise<T | null> => reading.catch(() => null);

/**
 * The log and all that is beside it as one file. What of that cannot be had keeps nobody from the log: it is
 * told. `names`: with those who have bread, and what was spoken; else they have marks there, and voices are
 * left out.
 */
export async function saveFile(
  world: Read,
  own: Log,
  equipment: Equipment,
  names: boolean,
  tell: (notice: Told) => void,
): Promise<void> {
  const pictures = await orNull(world.pictures().then(async (its) => toSaved(await its.load())));
  const circle = await orNull(
    world.circle().then(async (its) => savedCircle(readCircle(await its.load()).circle, names)),
  );
  // A note or a photo may tell of somebody: the page says so; a voice is somebody's.
  const out = { notes: true, photos: true, voices: names };
  const keepsakes = await orNull(world.keepsakes().then((its) => keepsakeLines(its, out)));
  const others = await orNull(
    world.otherLogs().then(async (its) => readOtherLogs(await its.load())),
  );
  const { lines, body } = fileBody({
    ...{ own, others: [...(others?.logs.values() ?? [])], equipment },
    ...{ pictures: pictures ?? [], circle: circle ?? [], keepsakes: keepsakes ?? [] },
  });
  exportFile(`${headOf(lines, await longSum(body))}\n${body}`);
  const left = (id: string, text: string): void => tell({ id, text, action: null });
  if (pictures === null) left('pictures', pictureTold.leftOut);
  if (circle === null) left('circle', circleTold.leftOut);
  if (keepsakes === null) left('keepsakes', saveAFile.keepsakesLeftOut);
  if (others === null || others.misread.length > 0) left('others', saveAFile.othersLeftOut);
}
