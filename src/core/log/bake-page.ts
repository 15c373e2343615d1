import type { LogRecord } from '../records/record.ts';
import type { Seen } from '../records/seen.ts';
import type { Instant } from '../units.ts';
import { bakeCalls, type BakeCall } from './bake-calls.ts';
import { bakeLoads, type BakeLoad } from './bake-loads.ts';
import { bakeLooks } from './bake-looks.ts';
import { bakeReadings, type TakenReading } from './bake-readings.ts';
import { bakeRows, withdrawnIn, type BakeRows, type Beside } from './bake-rows.ts';
import { bakeStages, plannedTouches, type BakeStay } from './bake-stages.ts';
import { bakeWeights, type BakeWeights } from './bake-weights.ts';

/**
 * How a bake ended. `early`: it was cleared away at a stage; `tray`: gone over, it became flat bread;
 * `left`: the kitchen was put to a place without it.
 */
export type BakeEnd =
  | { readonly how: 'open' | 'handedOver' | 'tray' | 'left' }
  | { readonly how: 'early'; readonly stage: string };

/** What happened in one bake, for its page in the Log. */
export interface BakePage {
  readonly bake: string;
  readonly name: string;
  readonly formula: string;
  readonly version: number;
  readonly from: Instant;
  /** null: it is open still. */
  readonly to: Instant | null;
  readonly begun: number;
  /** Loaves that came out of the oven. */
  readonly out: number;
  readonly end: BakeEnd;
  readonly stages: readonly BakeStay[];
  readonly readings: readonly TakenReading[];
  /** What its looks answered, as readings: in none of the above. */
  readonly looks: readonly Seen[];
  readonly calls: readonly BakeCall[];
  readonly loads: readonly BakeLoad[];
  readonly weights: BakeWeights;
  /** What was noted as it was put away: a key of the catalogue's notes, or the baker's own words. */
  readonly note: string | null;
}

const endOf = ({ end, start }: BakeRows, stages: readonly BakeStay[]): BakeEnd => {
  if (end === null) return { how: 'open' };
  const { fact } = end;
  if (fact.kind === 'jump') return { how: 'left' };
  const isDone = fact.kind === 'press' && fact.act === 'noted';
  if (!isDone) return { how: 'early', stage: stages.at(-1)?.stage ?? start.from };
  return { how: stages.some(({ stage }) => stage === 'rescue.tray') ? 'tray' : 'handedOver' };
};

/**
 * All that a bake's facts tell of it, running or over; null where the log has no bake of this id. What was
 * taken back is not among it, what was corrected reads as it does now.
 *
 * @example
 * bakePage([], 'cherry') // → null
 */
export function bakePage(
  records: readonly LogRecord[],
  bake: string,
  { withdrawn = withdrawnIn(records), ...beside }: Beside = {},
): BakePage | null {
  const found = bakeRows(records, bake, { withdrawn, ...beside });
  if (found === null) return null;
  const { start, end } = found;
  const { formula } = start.recipe;
  const stages = bakeStages(found, plannedTouches(records, withdrawn, found));
  const readings = bakeReadings(found);
  const loads = bakeLoads(found);
  const noted = end?.fact;
  return {
    bake,
    name: formula.name,
    formula: formula.id,
    version: formula.version,
    from: start.at,
    to: end?.fact.at ?? null,
    begun: start.loaves.length,
    out: new Set(loads.flatMap(({ out, loaves }) => (out === null ? [] : loaves))).size,
    end: endOf(found, stages),
    stages,
    readings,
    looks: bakeLooks(found),
    calls: bakeCalls(found, stages, loads),
    loads,
    weights: bakeWeights(found, readings),
    note: (noted?.kind === 'press' && noted.act === 'noted' && noted.text) || null,
  };
}
