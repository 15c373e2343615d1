import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const proving = () => at(new Hand({ wait: waitFor }), 'bulk.proving', 'mix.first');

/** Turns minute by minute to the look, answering each ask by `answer`; what rang, and when. */
const rungTo = (hand: Hand, answer: (hand: Hand) => void) => {
  const rang: { readonly call: string; readonly at: number }[] = [];
  while (hand.stage('a') === 'bulk.proving') {
    hand.turn(1);
    const call = hand.ringing;
    if (call === null || rang.at(-1)?.call === call) continue;
    rang.push({ call, at: hand.now });
    if (hand.stage('a') === 'bulk.proving') {
      hand.heard('a');
      answer(hand);
    }
  }
  return rang;
};

describe('the asks of a bulk', () => {
  it('ring each once, and between the last and the look it is quiet', () => {
    const hand = proving();
    hand.answer('a', {});
    const rang = rungTo(hand, (h) => h.measure('a', { what: 'rise', percent: 50, of: 'dough' }));
    const asks = rang.filter(({ call }) => call.includes('lead.rise'));
    expect(asks.length).toBeGreaterThanOrEqual(1);
    expect(new Set(asks.map(({ call }) => call)).size).toBe(asks.length);
    expect(rang.at(-1)!.call).toBe('a:bulk.look');
    expect((rang.at(-1)!.at - asks.at(-1)!.at) / MINUTE).toBeGreaterThanOrEqual(10);
  });

  it('close at a reading, and the next one has moved', () => {
    const hand = proving();
    const marks = () => hand.kitchen.bakes['a']!.context.marks;
    const first = Object.keys(marks()).find((mark) => mark.startsWith('lead.rise'))!;
    const before = marks()['lead.rise85']!;
    hand.turnTo(marks()[first]!);
    expect(hand.ringing).toBe(`a:${first}`);
    hand.measure('a', { what: 'rise', percent: 10, of: 'dough' });
    expect(hand.ringing).toBeNull();
    expect(marks()).not.toHaveProperty(first);
    expect(marks()['lead.rise85']).not.toBe(before);
  });

  it('are left out by one press each', () => {
    const hand = proving();
    const rang = rungTo(hand, (h) => {
      for (const item of ['rise45', 'rise70', 'rise85'])
        h.press('a', 'taskDone', { item, value: 'left' });
    });
    expect(rang.filter(({ call }) => call.includes('lead.rise'))).toHaveLength(1);
  });
});
