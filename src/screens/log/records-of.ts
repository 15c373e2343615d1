import { positionOf } from '../../../machines/kitchen/position.ts';
import { standingLog } from '../../core/log/standing-log.ts';
import type { Position } from '../../core/records/position.ts';
import type { LogRecord } from '../../core/records/record.ts';
import type { HouseLog } from '../house-log.ts';
import type { House } from '../house.ts';

/** The log a bake stands in: this kitchen's, or one of another tablet. */
export interface RecordsOf {
  readonly records: readonly LogRecord[];
  /** The bake's name there; two of one name are told apart by the id of their start. */
  readonly bake: string;
  /** Where this kitchen stands now, if it is its bake and runs still; else null. */
  readonly live: Position | null;
}

/** The logs whose bakes are shown, this kitchen's own first: a rehearsal shows nothing but its own. */
export const logsOf = (
  house: Pick<House, 'records' | 'rehearsal'>,
  log: Pick<HouseLog, 'others'>,
): readonly (readonly LogRecord[])[] =>
  house.rehearsal === null ? [house.records(), ...log.others()] : [house.records()];

/**
 * Where a bake's rows are, by the id of its start fact; null: it is in no log any more. Reads whole logs:
 * ask it in a memo. `bakePage(records, bake, { begun: start, ...(live ? { live } : {}) })` is its page.
 */
export function recordsOf(
  house: Pick<House, 'records' | 'rehearsal' | 'kitchen'>,
  log: Pick<HouseLog, 'others'>,
  start: string,
): RecordsOf | null {
  const standing = standingLog(logsOf(house, log), start);
  if (standing === null) return null;
  const { records, bake } = standing;
  const kitchen = house.kitchen();
  const runs = records === house.records() && kitchen.bakes[bake]?.context.start === start;
  return { records, bake, live: runs ? positionOf(kitchen) : null };
}
