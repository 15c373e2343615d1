import { describe, expect, it } from 'vitest';
import { positionOf } from '../../../machines/kitchen/position.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { recordsOf } from '../../../src/screens/log/records-of.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkToEnd } from '../../machines/support/onward.ts';

const hand = new Hand();
hand.start('a', 'mix.first');
const begun = [...hand.records];
const start = begun[0]!.fact.id;
const running = hand.kitchen;
walkToEnd(hand, 'a');
const ended = [...hand.records];

const house = (
  records: readonly LogRecord[],
  kitchen = running,
  rehearsal: number | null = null,
) => ({
  records: () => records,
  kitchen: () => kitchen,
  rehearsal,
});
const others = (...logs: readonly (readonly LogRecord[])[]) => ({ others: () => logs });

describe('the rows of a bake', () => {
  it('are this kitchen’s, with where it stands now, while it runs', () => {
    const found = recordsOf(house(begun), others(), start);
    expect(found).toEqual({ records: begun, bake: 'a', live: positionOf(running) });
  });

  it('have no place in the kitchen once it is over', () => {
    expect(recordsOf(house(ended, hand.kitchen), others(), start)?.live).toBeNull();
  });

  it('are another tablet’s where that one saw its end, or alone knows it', () => {
    const found = recordsOf(house(begun), others(ended), start);
    expect(found).toEqual({ records: ended, bake: 'a', live: null });
    expect(recordsOf(house([]), others(ended), start)?.records).toBe(ended);
  });

  it('are none of another tablet’s in a rehearsal', () => {
    expect(recordsOf(house([], running, 60), others(ended), start)).toBeNull();
  });
});
