import { isPast } from '../core/day/laid/is-past.ts';
import { shiftPlan } from '../core/day/laid/shift-plan.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Position } from '../core/records/position.ts';
import { standingPlan } from '../core/records/standing-plan.ts';
import { shiftPosition } from '../core/records/shift-position.ts';
import { waitsAgain } from '../core/records/waits-again.ts';
import { clockAsk } from '../core/speech/words/left.ts';
import { leapt } from '../core/speech/words/leapt.ts';
import type { Instant } from '../core/units.ts';
import type { Leap } from './kitchen-time.ts';

/** What is written without anyone having looked at the dough. */
const UNSEEN: readonly Fact['kind'][] = ['heard', 'snoozed'];

/** Bakes, timers and the oven that something was done to by these facts. */
const touchedBy = (facts: readonly Fact[]): ReadonlySet<string> =>
  new Set(
    facts.flatMap((fact) => {
      if (fact.kind === 'press') return [fact.who];
      if (fact.kind === 'timer') return [fact.timer];
      return 'bake' in fact ? [fact.bake] : [];
    }),
  );

const lastDone = (records: readonly LogRecord[]): LogRecord | undefined =>
  records.findLast(({ fact }) => !UNSEEN.includes(fact.kind));

/** Moved on by one leap: what was before it, and what it alone led on. */
function leaptOver(
  records: readonly LogRecord[],
  position: Position,
  { by, from }: Leap,
): Position {
  const before = records.findLast(({ fact }) => fact.at <= from);
  const after = records.map(({ fact }) => fact).filter(({ at }) => at > from);
  const since = { from, touched: touchedBy(after) };
  const waits = before ? waitsAgain(position, before.position, since) : position;
  return shiftPosition(waits, by, since);
}

/**
 * The tablet's clock had leapt. By how much is known where the page saw it: then what was before a leap
 * is moved on by it, and what was done since stands. Else nobody knows how long it really was:
 * the kitchen stands again as it did at the last thing that was done, with as long to go. Null where
 * nothing was done yet.
 *
 * @param leaps in their order; none where nobody knows
 */
export function clockWasWrong(
  records: readonly LogRecord[],
  now: Instant,
  leaps: readonly Leap[] = [],
): Deed | null {
  const last = lastDone(records);
  if (last === undefined) return null;
  const position =
    leaps.length === 0
      ? shiftPosition(last.position, now - last.fact.at)
      : leaps.reduce((moved, leap) => leaptOver(records, moved, leap), last.position);
  return { kind: 'jump', position };
}

/** The plan that stands, moved as the kitchen is; null where none does or nothing was done yet. */
export function planMoved(
  records: readonly LogRecord[],
  now: Instant,
  leaps: readonly Leap[],
): Deed | null {
  const last = lastDone(records);
  const plan = standingPlan(records);
  if (last === undefined || plan === null || isPast(plan, last.fact.at)) return null;
  const all = leaps.length > 0 ? leaps : [{ by: now - last.fact.at, from: last.fact.at }];
  const moved = all.reduce((one, { by, from }) => shiftPlan(one, by, from), plan);
  return { kind: 'plan', plan: { ...moved, sequence: plan.sequence + 1 } };
}

/** Has it stand there, its plan with it, and says so. */
export async function goOn(
  records: readonly LogRecord[],
  now: Instant,
  leaps: readonly Leap[],
  take: (deed: Deed) => Promise<void>,
  say: (words: string) => void,
): Promise<void> {
  const deed = clockWasWrong(records, now, leaps);
  if (deed === null) return;
  const moved = planMoved(records, now, leaps);
  await take(deed);
  if (moved !== null) await take(moved);
  say(leaps.length === 0 ? clockAsk.said : leapt.said);
}
