import type { Fact } from '../../src/core/records/fact.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { planAfter, standingPlan } from '../../src/core/records/standing-plan.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { kitchenAt, positionOf } from './position.ts';
import { replay, replayOn, startsIn, type Replayed } from './replay.ts';
import { samePlain } from './same-plain.ts';
import { settle } from './settle.ts';

/** Nothing is in it; a row that has lost it says nothing of the kind. */
const isBare = (table: object | undefined): boolean =>
  typeof table === 'object' && table !== null && Object.keys(table).length === 0;

/** Nothing bakes, the oven is off: all there is to know of the kitchen stands in the row's position. */
const isIdle = ({ position: { bakes, oven, lanes } }: LogRecord): boolean =>
  isBare(bakes) && isBare(lanes) && oven?.stage === 'off';

const runsOn = (records: readonly LogRecord[]): boolean =>
  records.every(({ seq }, i) => seq === records[0]!.seq + i);

/**
 * What no take-back withdrew, the take-backs among it; what was corrected, or read of a bake, goes with it. A
 * hush of a call that was taken back with its act stays here and is refused by every fold, as ever.
 */
const standingIn = (records: readonly LogRecord[]): readonly Fact[] => {
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const never = new Set(
    records.flatMap(({ fact }) =>
      fact.kind === 'start' && withdrawn.has(fact.id) ? [fact.bake] : [],
    ),
  );
  const stands = (fact: Fact): boolean =>
    !withdrawn.has(fact.id) &&
    !(fact.kind === 'correct' && withdrawn.has(fact.target)) &&
    !(fact.kind === 'reading' && never.has(fact.bake));
  return records.flatMap(({ fact }) => (stands(fact) ? [fact] : []));
};

/** The kitchen as it stood after the last of these rows; null where that cannot be had from them. */
function kitchenAfter(records: readonly LogRecord[], machines: Machines): Kitchen | null {
  const last = records.at(-1)!;
  const jump = records.findLastIndex(({ fact }) => fact.kind === 'jump');
  const planAtBase = standingPlan(records.slice(0, Math.max(0, jump)));
  const standing = standingIn(records.slice(jump + 1));
  const known = {
    seq: last.seq,
    standing,
    base: jump < 0 ? null : records[jump]!.position,
    plan: standing.reduce(planAfter, planAtBase),
    planAtBase,
  };
  try {
    const placed = { ...kitchenAt(last.position, startsIn(records), machines), ...known };
    const kitchen = settle(placed, machines).kitchen;
    return samePlain(positionOf(kitchen), last.position) ? kitchen : null;
  } catch {
    return null;
  }
}

/**
 * The kitchen at the end of a log, with only the rows folded that came since nothing went on in it: years
 * of bakes open as quickly as one. Rows of before were held against their positions as long as their bakes
 * ran; `replay` holds all of them, as a file that comes in is. Where the short way cannot be gone, it is gone
 * whole.
 */
export function openFold(records: readonly LogRecord[], machines: Machines): Replayed {
  const idle = records.findLastIndex(isIdle);
  const before = records.slice(0, idle + 1);
  // A jump put right what came before it: nothing of that is folded again.
  const isJumped = records.slice(idle + 1).some(({ fact }) => fact.kind === 'jump');
  const kitchen = isJumped || idle < 0 || !runsOn(before) ? null : kitchenAfter(before, machines);
  return kitchen === null
    ? replay(records, machines)
    : replayOn(kitchen, records.slice(idle + 1), machines);
}
