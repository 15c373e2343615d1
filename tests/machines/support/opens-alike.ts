// Whole: a page of the gallery has the hand too, and of node's own only a stand-in that has no parts.
import assert from 'node:assert';
import { wanted } from '../../../machines/kitchen/dues.ts';
import type { Kitchen, Machines } from '../../../machines/kitchen/kitchen.ts';
import { openFold } from '../../../machines/kitchen/open-fold.ts';
import { positionOf } from '../../../machines/kitchen/position.ts';
import type { Replayed } from '../../../machines/kitchen/replay.ts';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';

/**
 * All that a kitchen knows, but where a refold of it may begin. A hush of a call that is no more is refused
 * by every fold: it may stand or not.
 */
const knownTo = (kitchen: Kitchen) => ({
  ...kitchen,
  idle: null,
  standing: kitchen.standing.filter(({ kind }) => kind !== 'heard' && kind !== 'snoozed'),
  position: positionOf(kitchen),
  bakes: Object.values(kitchen.bakes).map(({ context }) => context),
  oven: kitchen.oven.context,
  lanes: Object.values(kitchen.lanes).map(({ context }) => context),
  attention: kitchen.attention.context,
  wanted: wanted(kitchen),
  target: takeBackTarget(kitchen)?.id,
});

/**
 * The kitchen at a log's end, had the short way as the program has it.
 * @throws AssertionError where it knows another thing than the whole fold
 */
export function openedShort(
  records: readonly LogRecord[],
  whole: Replayed,
  machines: Machines,
): Kitchen {
  const { kitchen, trouble } = openFold(records, machines);
  assert.deepStrictEqual(trouble, whole.trouble);
  assert.deepStrictEqual(knownTo(kitchen), knownTo(whole.kitchen));
  return kitchen;
}
