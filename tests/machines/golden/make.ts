import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { goldenNight } from './cold.ts';
import { goldenCut } from './cut.ts';
import { goldenDay } from './day.ts';
import { goldenFlat } from './flat.ts';
import { goldenHaste } from './haste.ts';
import { goldenItems } from './items.ts';
import { goldenPlanned } from './planned.ts';
import { goldenPots } from './pots.ts';
import { goldenWalk } from './walk.ts';

/**
 * Writes a golden log: `npx tsx tests/machines/golden/make.ts 4` writes walk-4.json. One a release;
 * those that are there are never written again, for they stand for the logs that bakers have.
 */
const name = `walk-${process.argv[2] ?? '1'}.json`;
const walks: Readonly<Record<string, () => readonly object[]>> = {
  1: goldenWalk,
  2: goldenDay,
  3: goldenNight,
  4: goldenHaste,
  5: goldenPots,
  6: goldenFlat,
  7: goldenPlanned,
  8: goldenItems,
  9: goldenCut,
};
const walk = walks[process.argv[2] ?? '1'];
if (walk === undefined) throw new Error('No golden walk has this number.');
const rows = walk().map((record) => JSON.stringify(record));
const file = fileURLToPath(new URL(name, import.meta.url));
writeFileSync(file, `[\n${rows.join(',\n')}\n]\n`, { flag: 'wx' });
console.log(`${name}: ${rows.length} records`);
