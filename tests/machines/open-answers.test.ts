import { describe, expect, it } from 'vitest';
import { LISTS } from '../../src/core/records/lists.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { Hand } from './support/hand.ts';

const SAFE: Record<string, string> = {
  mitts: 'dry',
  floor: 'clear',
  child: 'away',
  landing: 'ready',
  parchment: 'rated',
  knob: 'metal',
  blade: 'ready',
};

/** An oven that stands at the checklist before the hot pot. */
const atTheList = (): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued');
  hand.press('oven', 'ovenOn');
  hand.turn(45);
  hand.press('oven', 'pokeReady');
  return hand;
};

describe('an answer that leaves its item open', () => {
  it.each([
    ['child', 'close'],
    ['mitts', 'wet'],
    ['knob', 'plastic'],
    ['floor', 'cluttered'],
  ])('keeps the list before the oven from completing: %s %s', (item, value) => {
    const hand = atTheList();
    for (const each of LISTS.beforeOven) {
      expect(hand.answer('oven', { [each]: each === item ? value : SAFE[each]! })).toBe(true);
    }
    expect(stageOf(hand.kitchen.oven)).toBe('before');
    expect(hand.answer('oven', { [item]: SAFE[item]! })).toBe(true);
    expect(stageOf(hand.kitchen.oven)).toBe('score');
  });

  it('keeps a bake from starting with a pot that cold dough may crack', () => {
    const hand = new Hand();
    hand.start('a', 'read.list');
    for (const item of LISTS.beforeStart) {
      hand.answer('a', { [item]: item === 'pot' ? 'clayOrGlass' : 'ready' });
    }
    expect(stageOf(hand.kitchen.bakes['a']!)).toBe('read.list');
    hand.answer('a', { pot: 'bareIron' });
    expect(stageOf(hand.kitchen.bakes['a']!)).toBe('levain.feed');
  });
});
