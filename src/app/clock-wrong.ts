import { isPast } from '../core/day/laid/is-past.ts';
import { shiftPlan } from '../core/day/laid/shift-plan.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import { standingPlan } from '../core/records/standing-plan.ts';
import { shiftPosition } from '../core/records/shift-position.ts';
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

/**
 * The tablet's clock had leapt. By how much is known where the page saw it: then what was before the
 * leap is moved on by it, and what was done since stands. Else nobody knows how long it really was:
 * the kitchen stands again as it did at the last thing that was done, with as long to go. Null where
 * nothing was done yet.
 */
export function clockWasWrong(
  records: readonly LogRecord[],
  now: Instant,
  leap: Leap | null = null,
): Deed | null {
  const last = records.findLast(({ fact }) => !UNSEEN.includes(fact.kind));
  if (last === undefined) return null;
  if (leap === null) {
    return { kind: 'jump', position: shiftPosition(last.position, now - last.fact.at) };
  }
  const { by, from } = leap;
  const since = records.map(({ fact }) => fact).filter(({ at }) => at > from);
  return {
    kind: 'jump',
    position: shiftPosition(last.position, by, { from, touched: touchedBy(since) }),
  };
}

/** The plan that stands, moved as the kitchen is; null where none does or nothing was done yet. */
export function planMoved(
  records: readonly LogRecord[],
  now: Instant,
  leap: Leap | null,
): Deed | null {
  const last = records.findLast(({ fact }) => !UNSEEN.includes(fact.kind));
  const plan = standingPlan(records);
  if (last === undefined || plan === null || isPast(plan, last.fact.at)) return null;
  const { by, from } = leap ?? { by: now - last.fact.at, from: last.fact.at };
  return { kind: 'plan', plan: shiftPlan(plan, by, from) };
}

/** Has it stand there, its plan with it, and says so. */
export async function goOn(
  records: readonly LogRecord[],
  now: Instant,
  leap: Leap | null,
  take: (deed: Deed) => Promise<void>,
  say: (words: string) => void,
): Promise<void> {
  const deed = clockWasWrong(records, now, leap);
  if (deed === null) return;
  const moved = planMoved(records, now, leap);
  await take(deed);
  if (moved !== null) await take(moved);
  say(leap === null ? clockAsk.said : leapt.said);
}
