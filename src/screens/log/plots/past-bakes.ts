import { createSignal, onCleanup, untrack, type Accessor } from 'solid-js';
import type { ListedBake } from '../../../core/log/bake-list.ts';
import { bakeSpans, type BakeSpan, type Spans } from '../../../core/log/plots/bake-spans.ts';
import { bulkCurve, type BulkCurve } from '../../../core/log/plots/bulk-curve.ts';
import { pastBake, type PastBake } from '../../../core/log/plots/past-bake.ts';
import type { LogRecord } from '../../../core/records/record.ts';
import type { HouseLog } from '../../house-log.ts';
import type { House } from '../../house.ts';
import { makeAllBakes } from '../all-bakes.ts';
import { logsOf } from '../records-of.ts';
import { inPieces } from './in-pieces.ts';

/** A bake whose rows were found, and all that the plots know of it. */
export interface ReadBake {
  readonly past: PastBake;
  /** Asked for only where it is drawn. */
  curve(): BulkCurve | null;
}

export interface PastBakes {
  /** Those read so far, the latest begun first. */
  readonly bakes: Accessor<readonly ReadBake[]>;
  /** How many there will be. */
  readonly all: number;
  readonly done: Accessor<boolean>;
}

/** Told anew after so many. */
const TICK = 50;

/** What was read of a bake, by its last row: as long as that and its line are the same, so is the rest. */
const known = new WeakMap<LogRecord, Map<string, { line: ListedBake; read: ReadBake }>>();

function readBake(line: ListedBake, span: BakeSpan, withdrawn: ReadonlySet<string>): ReadBake {
  const last = span.rows.at(-1)!;
  const here = known.get(last) ?? new Map<string, { line: ListedBake; read: ReadBake }>();
  known.set(last, here);
  const found = here.get(line.start);
  if (found?.line === line) return found.read;
  let curve: BulkCurve | null | undefined;
  const read: ReadBake = {
    past: pastBake(span, withdrawn, line.turned),
    curve: () => (curve ??= bulkCurve(span, withdrawn)),
  };
  here.set(line.start, { line, read });
  return read;
}

/** Where each bake of some logs stands: of two that tell of one the log that saw its end. */
function* allSpans(
  logs: readonly (readonly LogRecord[])[],
): Generator<null, ReadonlyMap<string, { span: BakeSpan; of: Spans }>> {
  const found = new Map<string, { span: BakeSpan; of: Spans }>();
  for (const records of logs) {
    const of = yield* bakeSpans(records);
    for (const span of of.spans) {
      const other = found.get(span.start.id);
      if (!other || (!other.span.over && span.over)) found.set(span.start.id, { span, of });
    }
  }
  return found;
}

/**
 * The bakes of the Log as the plots know them, read once while the page is open and a piece at a time: the
 * page stands at once, and fills. `wanted` says which; those that were hidden are left out.
 */
export function readPastBakes(
  house: House,
  log: HouseLog,
  wanted: (line: ListedBake) => boolean,
): PastBakes {
  const lines = untrack(() =>
    makeAllBakes(house, log)().filter(
      (line) => log.abouts()[line.start]?.hidden !== true && wanted(line),
    ),
  );
  const logs = untrack(() => logsOf(house, log));
  const [bakes, setBakes] = createSignal<readonly ReadBake[]>([]);
  const [done, setDone] = createSignal(lines.length === 0);
  function* reading(): Generator<null, void> {
    const spans = yield* allSpans(logs);
    const read: ReadBake[] = [];
    for (const line of lines) {
      const found = spans.get(line.start);
      if (found) read.push(readBake(line, found.span, found.of.withdrawn));
      if (read.length % TICK === 0) setBakes(read.slice());
      yield null;
    }
    setBakes(read);
    setDone(true);
  }
  if (lines.length > 0) onCleanup(inPieces(reading()));
  return { bakes, all: lines.length, done };
}
