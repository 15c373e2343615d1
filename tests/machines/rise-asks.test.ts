import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';
import { RECIPE } from './support/recipe.ts';

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

  it('are done with once answered, however much later the dough turns out', () => {
    const hand = new Hand({ wait: waitFor });
    const cold = { kind: 'start', bake: 'a', loaves: ['a1'], recipe: RECIPE, kitchen: 18 } as const;
    hand.do({ ...cold, from: 'bulk.proving' });
    const answered: string[] = [];
    while (hand.stage('a') === 'bulk.proving' && answered.length < 9) {
      hand.turn(1);
      const call = hand.ringing;
      if (call === null || hand.stage('a') !== 'bulk.proving') continue;
      answered.push(call);
      hand.measure('a', { what: 'rise', percent: 0, of: 'dough' });
      const open = openTasks(hand.kitchen.bakes['a']!).filter(({ calls }) => calls);
      expect(open, `${call} answered`).toEqual([]);
      expect(hand.ringing).toBeNull();
    }
    expect(answered.filter((call) => call.includes('rise85'))).toHaveLength(1);
    expect(new Set(answered).size).toBe(answered.length);
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
