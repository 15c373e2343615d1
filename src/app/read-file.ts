import { MACHINE_VERSION, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { longSum } from '../adapters/sum.ts';
import type { InLine } from '../core/records/file-lines.ts';
import { bodyAt } from '../core/records/log-file.ts';
import type { Log } from '../core/records/merge-logs.ts';
import { readLogFile } from '../core/records/read-log-file.ts';
import { readAFile } from '../core/speech/words/read-a-file.ts';
import { fill } from '../core/speech/fill.ts';
import type { FileRead } from '../screens/house.ts';
import { incoming } from './incoming.ts';
import type { World } from './world.ts';

function whyNot(reason: InLine): string {
  const { path } = reason;
  if (path === 'machineVersion' || path === 'kitchenFile')
    return fill(readAFile.newer, { line: reason.line });
  if (path === 'cut') return fill(readAFile.cut, { ...reason });
  if (path === 'sum') return readAFile.changed;
  return fill(readAFile.unreadable, { ...reason, path: path || 'row' });
}

const startsIn = (log: Log): number => log.filter(({ fact }) => fact.kind === 'start').length;

/**
 * A saved file held against what is here: what of it would come in, and how; else the sentence why nothing
 * does. Nothing is written. Rejects where what is here cannot be read.
 */
export async function readFile(
  text: string,
  here: Log,
  world: Pick<World, 'otherLogs'>,
): Promise<FileRead> {
  const no = (why: string): FileRead => ({ file: null, why });
  const sum = await longSum(text.slice(bodyAt(text)));
  const { file, reason } = readLogFile(text, MACHINE_VERSION, sum);
  if (reason !== null) return no(whyNot(reason));
  // One that stood beside another kitchen's was refolded when it came there, by the program of that day.
  const { trouble } = replay(file.records, MACHINES);
  if (trouble !== null) return no(fill(readAFile.differs, { seq: trouble.seq }));
  const { merged, comes } = await incoming(file, here, await world.otherLogs());
  if (merged.clash !== null) return no(fill(readAFile.clash, { seq: merged.clash.seq }));
  const last = file.records.at(-1)?.fact.at ?? null;
  const [bakes, fresh] = [startsIn(file.records), startsIn(merged.fresh)];
  return { file: { ...file, bakes, fresh, last, comes }, why: null };
}
