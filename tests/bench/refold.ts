import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { Hand } from '../machines/support/hand.ts';
import { WHOLE_BAKE } from '../machines/support/walk.ts';

export interface RefoldTime {
  readonly facts: number;
  readonly ms: number;
}

/** Folds a log of whole bakes, one after the other, as a tablet does when it is opened. */
export function refold(least: number): RefoldTime {
  const hand = new Hand();
  while (hand.records.length < least) for (const [, act] of WHOLE_BAKE) act(hand);
  const began = performance.now();
  const { trouble } = replay(hand.records, MACHINES);
  const ms = performance.now() - began;
  if (trouble !== null) throw new Error(`The log does not fold: row ${trouble.seq}.`);
  return { facts: hand.records.length, ms };
}
