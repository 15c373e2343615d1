import type { Position } from '../../src/core/records/position.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { standingPlan } from '../../src/core/records/standing-plan.ts';
import { apply } from './apply.ts';
import { emptyKitchen, type Kitchen, type Machines, type StartFact } from './kitchen.ts';
import { positionOf } from './position.ts';
import { samePlain } from './same-plain.ts';

/** The first record whose stored position is not what these machines come to, and the last one. */
export interface ReplayTrouble {
  readonly seq: number;
  readonly last: Position;
}

export interface Replayed {
  readonly kitchen: Kitchen;
  readonly trouble: ReplayTrouble | null;
}

/** Start facts of every row: a jump's position names them, however old they are. */
export const startsIn = (records: readonly LogRecord[]): Record<string, StartFact> =>
  Object.fromEntries(
    records.flatMap(({ fact }) => (fact.kind === 'start' ? [[fact.id, fact] as const] : [])),
  );

/**
 * Folds rows into a kitchen in seq order, and holds each stored position against the fold's. Stops at the
 * first that differs, or whose number is not the next.
 */
export const replayOn = (
  begun: Kitchen,
  records: readonly LogRecord[],
  machines: Machines,
): Replayed => {
  let kitchen = begun;
  for (const { seq, fact, position } of records) {
    let next: Kitchen | null = null;
    try {
      // A row missing, doubled or out of place may well lead to the same position: its number tells.
      const led = seq === kitchen.seq + 1 ? apply(kitchen, machines, fact) : null;
      if (led?.taken && samePlain(positionOf(led.kitchen), position)) next = led.kitchen;
    } catch {
      // What cannot be followed leads nowhere.
    }
    if (next === null) return { kitchen, trouble: { seq, last: records.at(-1)!.position } };
    kitchen = next;
  }
  return { kitchen, trouble: null };
};

/**
 * Folds a whole log in seq order, from its last jump on. Models are never called: their results are in the
 * facts.
 */
export const replay = (records: readonly LogRecord[], machines: Machines): Replayed => {
  const from = Math.max(
    0,
    records.findLastIndex(({ fact }) => fact.kind === 'jump'),
  );
  const before = records.slice(0, from);
  const plan = standingPlan(before);
  const kitchen: Kitchen = {
    ...emptyKitchen(machines),
    seq: (records[from]?.seq ?? 1) - 1,
    starts: startsIn(before),
    plan,
    planAtBase: plan,
  };
  return replayOn(kitchen, records.slice(from), machines);
};
