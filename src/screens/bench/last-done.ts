import { advance } from '../../../machines/kitchen/advance.ts';
import { MACHINES } from '../../../machines/kitchen/kitchen.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { kitchenAt } from '../../../machines/kitchen/position.ts';
import { machineOf } from '../../../machines/kitchen/machine-of.ts';
import { settle } from '../../../machines/kitchen/settle.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { LogRecord } from '../../core/records/record.ts';
import type { Instant } from '../../core/units.ts';
import { heatsIn, type Heats } from '../heats-in.ts';

/** The stage that the last standing press was made at, and when; null before the first one. */
export interface LastDone {
  readonly who: string;
  readonly stage: string;
  readonly at: Instant;
  /** What the oven was made ready for by then. */
  readonly heats: Heats;
}

/**
 * The row before a press says where its bake stood, but time may have led on since, and that is in no
 * row: the machines go there from it.
 */
export function lastDone(
  records: readonly LogRecord[],
  starts: Kitchen['starts'],
): LastDone | null {
  const undone = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const i = records.findLastIndex(({ fact }) => fact.kind === 'press' && !undone.has(fact.id));
  const fact = records[i]?.fact;
  const before = records[i - 1];
  if (fact?.kind !== 'press' || before === undefined) return null;
  const stood = settle(kitchenAt(before.position, starts, MACHINES), MACHINES).kitchen;
  const { kitchen } = advance(stood, MACHINES, fact.at);
  const machine = machineOf(kitchen, fact.who);
  if (machine === undefined) return null;
  const { who, at } = fact;
  return { who, stage: stageOf(machine), at, heats: heatsIn(kitchen, who) };
}
