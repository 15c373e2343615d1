import { MACHINE_VERSION, MACHINES } from '../../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../../machines/kitchen/position.ts';
import { foldLog } from '../../../src/app/fold-log.ts';
import { readFile } from '../../../src/app/read-file.ts';
import { readOtherLogs } from '../../../src/app/read-others.ts';
import { bakePage } from '../../../src/core/log/bake-page.ts';
import { makeBakeList } from '../../../src/core/log/bake-list.ts';
import { dayOfBake } from '../../../src/core/log/day-of-bake.ts';
import { readingsCsv } from '../../../src/core/log/readings-csv.ts';
import { formulasBeside } from '../../../src/core/records/formulas-beside.ts';
import { savedCircle } from '../../../src/core/circle/saved-circle.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import type { Log } from '../../../src/core/records/merge-logs.ts';
import { readLogFile } from '../../../src/core/records/read-log-file.ts';
import { readRecord } from '../../../src/core/records/read-record.ts';
import type { Seeded } from '../../core/day/support/seeded.ts';
import { makeMemoryOtherLogs } from '../../fakes/memory-other-logs.ts';
import { asOld, bodyOf, fileOf, sealed, sumIn } from '../../fakes/saved-file.ts';
import { breakData, toJson } from '../break-data.ts';
import { breakText } from '../break-text.ts';
import { either, leftOut, ofData, type Made, type Reader } from '../reader.ts';
import { CIRCLE_HERE } from './kitchen.ts';
import { KEEPSAKE_LINES } from './keepsakes.ts';
import { walk } from './records.ts';

const read = (rows: readonly unknown[]): Log =>
  rows.map((row) => {
    const { record } = readRecord(row, MACHINE_VERSION);
    if (record === null) throw new Error('A row of a golden log is no record.');
    return record;
  });
const HERE = read(walk(9).slice(0, 30));
const MORE = read(walk(9).slice(0, 40));
/** Another tablet's: its facts have names of their own. */
const OTHER = read(
  JSON.parse(JSON.stringify(walk(4).slice(0, 30)).replaceAll(/"f(\d+)"/g, '"h$1"')) as unknown[],
);

const FILE = fileOf({
  own: MORE,
  others: [OTHER],
  equipment: EQUIPMENT,
  pictures: [{ picture: 'lane-wheat', jpeg: '/9j/Bw==' }],
  circle: savedCircle(CIRCLE_HERE, true),
  keepsakes: KEEPSAKE_LINES,
});
const BODY = bodyOf(FILE);
const OLD = asOld(FILE);
const BARE = MORE.map((row) => JSON.stringify(row));

/** One line broken as data, as text, cut out, doubled or put elsewhere. */
function breakLines(lines: readonly string[], chance: Seeded): readonly string[] {
  // The first of a kind tells how many there are of it: it is met more often than by its share.
  const at = chance.chance(0.2) ? 0 : chance.whole(0, lines.length - 1);
  const how = chance.whole(0, 9);
  const line = lines[at]!;
  if (how <= 5)
    return lines.with(at, toJson(breakData(JSON.parse(line) as unknown, chance, 'file')));
  if (how === 6) return lines.with(at, breakText(line, chance));
  if (how === 7) return lines.toSpliced(at, chance.whole(1, 3));
  if (how === 8) return lines.toSpliced(chance.whole(0, lines.length), 0, line);
  return lines.with(at, lines[chance.whole(0, lines.length - 1)]!);
}

/** A saved file as damage leaves it, or as a forger does, who reckons its sum anew. */
function aFile(chance: Seeded): string {
  const n = chance.next();
  if (n < 0.1) return chance.of([FILE, OLD.join('\n'), BARE.join('\n')]);
  if (n < 0.2) return breakText(FILE, chance);
  if (n < 0.75) return sealed(breakLines(BODY, chance));
  return breakLines(chance.of([OLD, BARE]), chance).join('\n');
}

/** All that the Log shows of it: a log that stands beside the kitchen's own is not folded as it comes in. */
function shownOf(log: Log): unknown {
  const { bakes } = makeBakeList()(log);
  return {
    pages: bakes.map(({ bake, start }) => bakePage(log, bake, { begun: start })),
    days: bakes.map(({ start }) => dayOfBake([log], start, { cutAt: 1_935_000_000_000 })),
    csv: readingsCsv(log, { zone: 'Europe/Berlin', units: { heat: 'C', weight: 'g' } }),
    formulas: formulasBeside([log], HERE, new Set()),
  };
}

const otherLogs = makeMemoryOtherLogs();
otherLogs.logs.set('harbour', structuredClone(OTHER.slice(0, 6)));
const listOf = (value: unknown): unknown[] =>
  Array.isArray(value) ? (value as unknown[]) : [value];
const stateOf = (): string => JSON.stringify([HERE, [...otherLogs.logs]]);
const STATE = stateOf();

/** Readers of whole logs: the one on the disk, those beside it, and saved files. */
export const FILE_READERS: readonly Reader[] = [
  {
    of: 'core/records/read-log-file.ts readLogFile',
    make: aFile,
    read: (text: string) => {
      const { file, reason } = readLogFile(text, MACHINE_VERSION, sumIn(text));
      return either(file?.others.map(shownOf), reason);
    },
    share: 0.5,
  },
  {
    of: 'app/read-file.ts readFile',
    make: aFile,
    read: async (text: string): Promise<Made> => {
      const world = { otherLogs: () => Promise.resolve(otherLogs) };
      const { file, why } = await readFile(text, HERE, world);
      if (stateOf() !== STATE) throw new Error('What is here has changed.');
      return either(file !== null, why);
    },
    share: 0.25,
  },
  {
    of: 'app/fold-log.ts foldLog',
    make: (chance) => ofData([...HERE])(chance),
    read: (value: unknown): Made => {
      const rows = listOf(value);
      const { records, kitchen, trouble } = foldLog(rows, MACHINES);
      if (kitchen.seq > records.length) throw new Error('More was folded than was read.');
      if (trouble === null) return { taken: positionOf(kitchen) };
      return { refused: trouble.kind === 'unreadable' ? [trouble.reason] : [trouble.kind] };
    },
    share: 0.25,
  },
  {
    of: 'app/read-others.ts readOtherLogs',
    make: (chance) => ofData(new Map([['harbour', [...OTHER]]]))(chance),
    read: (value: unknown) => {
      // What reads the disk hands on lists of rows.
      const rows = value instanceof Map ? [...value].map(([name, its]) => [name, listOf(its)]) : [];
      const { logs, misread } = readOtherLogs(new Map(rows as [string, unknown[]][]));
      return leftOut(
        [...logs].map(([name, its]) => [name, its.length]),
        misread,
      );
    },
  },
];
