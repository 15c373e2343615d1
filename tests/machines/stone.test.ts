import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { stepOn, walkTo, walkToEnd } from './support/onward.ts';
import { RECIPE, STONE } from './support/recipe.ts';

const onStone = (): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1', 'a2'], STONE);
  return hand;
};

describe('loaves on a hot stone', () => {
  it('walk from the read-through to the note, and replay at every length', () => {
    const hand = new Hand();
    hand.start('a', 'read.plan', ['a1', 'a2'], STONE);
    walkToEnd(hand);
    const runs = hand.modelRuns;
    for (let n = 1; n <= hand.records.length; n += 1) {
      expect(hand.replayed(hand.records.slice(0, n)).trouble).toBeNull();
    }
    expect(hand.modelRuns).toBe(runs);
    const stages = hand.says
      .filter(({ who }) => who === 'oven' || who === 'lane.pot')
      .map(({ stage }) => stage);
    expect(stages.filter((stage) => stage === 'vent')).toHaveLength(2);
    expect(stages).not.toContain('lidded');
    expect(stages).not.toContain('lift');
  });

  it('call hot when the steam has to go, and one later press records it', () => {
    const hand = walkTo(onStone(), 'oven', 'steaming');
    expect(hand.ringing).toBeNull();
    const end = hand.deadline('oven')!;
    hand.turnTo(end);
    expect([hand.stage('oven'), hand.ringing]).toEqual(['vent', 'lane.pot:vent']);
    hand.turn(3);
    expect(hand.press('oven', 'lidOff')).toBe(false);
    expect(hand.press('oven', 'steamOut', { was: end + MINUTE })).toBe(true);
    expect([hand.stage('oven'), hand.ringing]).toEqual(['open', null]);
    expect(hand.deadline('oven')).toBe(end + 21 * MINUTE);
    hand.takeBack();
    expect(hand.ringing).toBe('lane.pot:vent');
  });

  it('may have their steam let out early, but not before they were in', () => {
    const hand = walkTo(onStone(), 'oven', 'steaming');
    expect(hand.press('oven', 'steamOut', { was: hand.now - MINUTE })).toBe(false);
    expect(hand.press('oven', 'steamOut')).toBe(true);
    expect(hand.stage('oven')).toBe('open');
  });

  it('are asked nothing about a knob', () => {
    const hand = walkTo(onStone(), 'oven', 'before');
    expect(hand.answer('oven', { knob: 'metal' })).toBe(false);
    stepOn(hand, 'oven');
    expect(hand.stage('oven')).toBe('score');
  });

  it('never go in with loaves of a pot, which are looked at anew when the others are gone', () => {
    const hand = onStone();
    hand.start('b', 'oven.queued', ['b1'], RECIPE);
    walkTo(hand, 'oven', 'load');
    expect(hand.press('oven', 'loaded', { loaves: ['a1', 'b1'] })).toBe(false);
    expect(hand.press('oven', 'loaded', { loaves: ['b1'] })).toBe(false);
    hand.press('a', 'ended');
    expect([hand.stage('oven'), hand.kitchen.oven.context.vessel]).toEqual(['poke', 'pot']);
    walkTo(hand, 'oven', 'load', 'b');
    expect(hand.press('oven', 'loaded', { loaves: ['b1'] })).toBe(true);
    expect(hand.stage('oven')).toBe('lidded');
    expect(hand.replayed().trouble).toBeNull();
  });
});
