import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';

const THREE = ['a1', 'a2', 'a3'];

describe('fewer loaves than planned', () => {
  it('leave the oven’s queue, survive a reload and come back by a take-back', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', THREE);
    expect(hand.press('a', 'fewer', { loaves: ['a3', 'a1'] })).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a1', 'a3']);
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(kitchen.bakes['a']?.context.loaves).toEqual(['a1', 'a3']);
    expect(hand.takeBack()).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(THREE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['none', []],
    ['all', THREE],
    ['one twice', ['a1', 'a1']],
    ['one of nobody’s', ['a1', 'x']],
  ])('are refused where %s would remain', (_, loaves) => {
    const hand = new Hand();
    hand.start('a', 'shape.divide', THREE);
    expect(hand.press('a', 'fewer', { loaves })).toBe(false);
    expect(hand.kitchen.bakes['a']?.context.loaves).toEqual(THREE);
  });

  it('never lose a loaf that is in the pot or out of it', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', THREE);
    walkTo(hand, 'oven', 'lidded');
    expect(hand.press('a', 'fewer', { loaves: ['a2', 'a3'] })).toBe(false);
    walkTo(hand, 'oven', 'recover');
    expect(hand.press('a', 'fewer', { loaves: ['a2', 'a3'] })).toBe(false);
    expect(hand.press('a', 'fewer', { loaves: ['a1'] })).toBe(true);
    expect(hand.stage('a')).toBe('cool.cooling');
    expect(hand.stage('oven')).toBe('turnOff');
  });

  it('bake to the end with those that remain', () => {
    const hand = new Hand();
    hand.start('a', 'shape.divide', THREE);
    hand.press('a', 'fewer', { loaves: ['a2'] });
    walkToEnd(hand);
    const loads = hand.records.flatMap(({ fact }) =>
      fact.kind === 'press' && fact.act === 'loaded' ? [fact.loaves] : [],
    );
    expect(loads).toEqual([['a2']]);
  });

  it('are refused once the bread cools', () => {
    const hand = new Hand();
    hand.start('a', 'cool.cooling', THREE);
    expect(hand.press('a', 'fewer', { loaves: ['a1'] })).toBe(false);
  });
});
