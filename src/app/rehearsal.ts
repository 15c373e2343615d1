import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import type { Clock, LogStore, Settings } from '../../machines/ports.ts';
import { makeRehearsalClock } from '../adapters/rehearsal-clock.ts';
import { makeLogStore } from '../adapters/store.ts';
import { readRecord } from '../core/records/read-record.ts';
import type { LogRecord } from '../core/records/record.ts';
import { LOGS } from './logs.ts';

/** An hour passes in a minute. */
const RATE = 60;

const BEGAN = 'rehearsalBegan';

/** Empties the last rehearsal's log and notes when this one began. */
export async function beginRehearsal(settings: Settings, wall: Clock): Promise<void> {
  await makeLogStore(LOGS.rehearsal).rewrite([]);
  await settings.set(BEGAN, wall.now());
}

/** The fast clock, going on from the rehearsal's beginning across reloads. */
export async function rehearsalClock(settings: Settings, wall: Clock): Promise<Clock> {
  const began = await settings.get(BEGAN).catch(() => null);
  const now = wall.now();
  const from = typeof began === 'number' ? began + (now - began) * RATE : now;
  return makeRehearsalClock(wall, RATE, from);
}

/**
 * The kitchen's real records, so that a rehearsal has the baker's own formulas. They are read and
 * nothing more: only `load` is asked for. What comes after a row that cannot be read is left out.
 * Rejects with a StoreError where the log cannot be opened.
 */
export async function lendRecords(earnest: Pick<LogStore, 'load'>): Promise<readonly LogRecord[]> {
  const records: LogRecord[] = [];
  for (const row of await earnest.load()) {
    const { record } = readRecord(row, MACHINE_VERSION);
    if (record === null) break;
    records.push(record);
  }
  return records;
}

/** Of this tablet's real log. */
export const lendHere = (): Promise<readonly LogRecord[]> =>
  lendRecords(makeLogStore(LOGS.earnest));
