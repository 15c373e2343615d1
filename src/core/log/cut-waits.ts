import type { LogRecord } from '../records/record.ts';
import { DAY, type Instant } from '../units.ts';

/** A loaf that was not looked at by then is eaten. Judgement. */
const EATEN = 2 * DAY;

/**
 * Whether the last bake's loaf may still be looked at: it was handed over within two days, and nobody has told
 * of its crumb yet. What was taken back does not count.
 *
 * @example
 * cutWaits([], 0) // → false
 */
export function cutWaits(records: readonly LogRecord[], now: Instant): boolean {
  const told = new Set<string>();
  const withdrawn = new Set<string>();
  for (let i = records.length - 1; i > 0; i -= 1) {
    const { fact } = records[i]!;
    if (fact.at < now - EATEN) return false;
    if (fact.kind === 'takeBack') withdrawn.add(fact.target);
    if (fact.kind === 'cut') told.add(fact.target);
    if (fact.kind !== 'press' || fact.act !== 'noted' || withdrawn.has(fact.id)) continue;
    const start = records[i - 1]!.position.bakes[fact.who]?.start;
    return start !== undefined && !told.has(start);
  }
  return false;
}
