import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import { shiftPosition } from '../core/records/shift-position.ts';
import { clockAsk } from '../core/speech/en/left.ts';
import type { Instant } from '../core/units.ts';

/** What is written without anyone having looked at the dough. */
const UNSEEN: readonly Fact['kind'][] = ['heard', 'snoozed'];

/**
 * The tablet's clock had leapt: how long it really was, nobody knows. The kitchen stands again as it
 * did at the last thing that was done, with as long to go. Null where nothing was done yet.
 */
export function clockWasWrong(records: readonly LogRecord[], now: Instant): Deed | null {
  const last = records.findLast(({ fact }) => !UNSEEN.includes(fact.kind));
  return last === undefined
    ? null
    : { kind: 'jump', position: shiftPosition(last.position, now - last.fact.at) };
}

/** Has it stand there, and says so. */
export async function goOn(
  records: readonly LogRecord[],
  now: Instant,
  take: (deed: Deed) => Promise<void>,
  say: (words: string) => void,
): Promise<void> {
  const deed = clockWasWrong(records, now);
  if (deed === null) return;
  await take(deed);
  say(clockAsk.said);
}
