import type { OtherLogs } from '../../machines/ports.ts';
import { sumOf } from '../adapters/sum.ts';
import { goesOn, type Log } from '../core/records/merge-logs.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Incoming } from './incoming.ts';

/** So many digits of its sum tell one log from any other. */
const DIGITS = 32;

/** What a log of another tablet is named by: its facts, which are the same wherever it lies. */
export const nameOf = (log: Log): string =>
  sumOf(log.map(({ fact }) => fact.id).join('\n')).slice(0, DIGITS);

/** Writes what of other tablets' logs is new, and lets go of those that it goes on from; what undoes it. */
export async function takeOthers(
  { write }: OtherLogs,
  next: readonly Log[],
  { rows, named }: Pick<Incoming, 'rows' | 'named'>,
): Promise<() => Promise<void>> {
  const isSame = (one: Log, other: Log): boolean =>
    one.length === other.length && goesOn(one, other);
  const change = new Map<string, Log | null>();
  for (const [name, log] of named)
    if (!next.some((one) => isSame(one, log))) change.set(name, null);
  for (const log of next)
    if (![...named.values()].some((one) => isSame(one, log))) change.set(nameOf(log), log);
  if (change.size > 0) await write(change);
  return () =>
    // They go back as they were found.
    write(new Map([...change.keys()].map((name) => [name, was(rows.get(name))] as const)));
}

const was = (rows: readonly unknown[] | undefined): readonly LogRecord[] | null =>
  (rows as readonly LogRecord[] | undefined) ?? null;
