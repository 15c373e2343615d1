import type { CutRead } from '../records/cut-read.ts';
import type { LogRecord } from '../records/record.ts';
import type { Instant } from '../units.ts';
import { hear, nothingTold, tellAnew, type Told, type ToldBake } from './told-bakes.ts';
import { turnedOut, type TurnedOut } from './turned-out.ts';

/** One bake of the list: the same object for as long as nothing of it has changed. */
export interface ListedBake {
  readonly bake: string;
  /** The id of its start fact: a bake's name may come again. */
  readonly start: string;
  readonly name: string;
  /** Its formula's id, of whichever version. */
  readonly formula: string;
  /** Those it was begun with, or that remain once some were given up. */
  readonly loaves: number;
  readonly at: Instant;
  /** When it was put away or ended; null: it is open, or the kitchen was put to a place without it. */
  readonly to: Instant | null;
  /** What was noted as it was put away: a key of the catalogue's notes, or the baker's own words. */
  readonly note: string | null;
  readonly turned: TurnedOut;
}

/** All bakes of one log. */
export interface BakeList {
  /** The latest begun first. */
  readonly bakes: readonly ListedBake[];
  /** What cut loaves showed, by the ids of their bakes' starts: of bakes of other logs too. */
  readonly cuts: ReadonlyMap<string, CutRead>;
}

const lineOf = (its: ToldBake, cut: CutRead | undefined, isOpen: boolean): ListedBake => {
  const { start, loaves, end } = its;
  const { formula } = start.recipe;
  return {
    bake: start.bake,
    start: start.id,
    name: formula.name,
    formula: formula.id,
    loaves,
    at: start.at,
    to: end?.at ?? null,
    note: (end?.act === 'noted' && end.text) || null,
    turned: turnedOut(its, cut, isOpen),
  };
};

const sameLine = (a: ListedBake, b: ListedBake): boolean =>
  (Object.keys(b) as (keyof ListedBake)[]).every((key) => a[key] === b[key]);

const sameRow = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

/** Whether a log is the one that was read before, and perhaps more: rows are only ever added to one. */
const goesOn = (seen: readonly LogRecord[], records: readonly LogRecord[]): boolean =>
  seen.length === 0 ||
  (seen.length <= records.length &&
    records[0] === seen[0] &&
    records[seen.length - 1] === seen.at(-1));

/**
 * Reads the bakes of a log that grows. Handed the log as it is now it reads the rows that were added and
 * no others, and hands back the very list it had where they tell nothing new of any bake. Handed another
 * log it begins anew. What was taken back is in no list.
 *
 * @example
 * makeBakeList()([]).bakes // → []
 */
export function makeBakeList(): (records: readonly LogRecord[]) => BakeList {
  let seen: readonly LogRecord[] = [];
  let told: Told = nothingTold();
  let list: BakeList = { bakes: [], cuts: told.cuts };
  const lines = new Map<string, ListedBake>();

  /** Of what was told, and of bakes without an end: whether they are open tells the last row's place. */
  const draw = (last: LogRecord | undefined): boolean => {
    let isNew = false;
    for (const start of new Set([...told.touched, ...told.endless])) {
      const its = told.bakes.get(start);
      if (its === undefined) continue;
      const isOpen = last?.position.bakes[its.start.bake]?.start === start;
      const line = lineOf(its, told.cuts.get(start), isOpen);
      const old = lines.get(start);
      if (old !== undefined && sameLine(old, line)) continue;
      lines.set(start, line);
      isNew = true;
    }
    told.touched.clear();
    return isNew;
  };

  return (records) => {
    if (records === seen) return list;
    const isMore = goesOn(seen, records);
    if (!isMore) told = nothingTold();
    for (let i = isMore ? seen.length : 0; i < records.length; i += 1)
      hear(told, (records[i] as LogRecord).fact);
    seen = records;
    const isTold = !isMore || told.stale || told.touched.size > 0;
    tellAnew(told);
    if (!draw(records.at(-1)) && !isTold) return list;
    const bakes = [...told.bakes.keys()].map((start) => lines.get(start) as ListedBake).reverse();
    list = {
      bakes: sameRow(bakes, list.bakes) ? list.bakes : bakes,
      cuts: new Map(told.cuts),
    };
    return list;
  };
}
