import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { stepOn, walkTo, walkToEnd } from './support/onward.ts';
import { RECIPE, SCOOP, TIN } from './support/recipe.ts';

const started = (recipe = TIN, from = 'read.plan'): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', from, ['a1', 'a2'], recipe);
  return hand;
};
const entered = (hand: Hand, stage: string) => hand.says.filter((s) => s.stage === stage).length;

describe('a warm proof', () => {
  it.each([
    ['shaped, in a tin', TIN],
    ['spooned into its tin', SCOOP],
    [
      'shaped, in a pot',
      { ...TIN, process: { ...TIN.process, vessel: 'pot', lidded: 18 } } as const,
    ],
  ])('%s walks from the read-through to the note, and replays at every length', (_, recipe) => {
    const hand = started(recipe);
    walkToEnd(hand);
    const runs = hand.modelRuns;
    for (let n = 1; n <= hand.records.length; n += 1) {
      expect(hand.replayed(hand.records.slice(0, n)).trouble).toBeNull();
    }
    expect(hand.modelRuns).toBe(runs);
    expect(entered(hand, 'proof.poke')).toBe(1);
    for (const cold of ['proof.counter', 'proof.retard', 'proof.toFridge', 'steaming']) {
      expect(entered(hand, cold)).toBe(0);
    }
    expect(entered(hand, 'lift')).toBe(recipe.process.vessel === 'pot' ? 2 : 0);
    expect(entered(hand, 'shape.benchRest')).toBe(recipe.process.shaping === 'scoop' ? 0 : 1);
  });

  it('calls for the oven in time to be hot by the likely end, and goes on by itself', () => {
    const hand = walkTo(started(), 'a', 'proof.warm');
    const { likely, look } = hand.kitchen.bakes['a']!.context.marks;
    expect(hand.stage('oven')).toBe('off');
    hand.turnTo(hand.deadline('a')!);
    expect([hand.stage('a'), hand.stage('oven'), hand.ringing]).toEqual([
      'proof.soon',
      'turnOn',
      'oven:turnOn',
    ]);
    expect(hand.deadline('a')).toBe(look);
    hand.press('oven', 'ovenOn');
    expect(hand.deadline('oven')!).toBeLessThanOrEqual(likely!);
    expect(hand.ringing).toBeNull();
    hand.turnTo(hand.deadline('oven')!);
    expect([hand.stage('oven'), hand.ringing]).toEqual(['holding', null]);
    hand.turnTo(hand.deadline('a')!);
    expect([hand.stage('a'), hand.ringing]).toEqual(['proof.poke', 'a:proof.poke']);
    hand.press('a', 'loafReady');
    expect(hand.stage('oven')).toBe('before');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('that is not ready keeps the oven hot, and its dent moves the look', () => {
    const hand = walkTo(started(), 'a', 'proof.soon');
    hand.press('oven', 'ovenOn');
    hand.turnTo(hand.deadline('a')!);
    const { likely } = hand.kitchen.bakes['a']!.context.marks;
    hand.answer('a', { dent: 'springs' });
    hand.press('a', 'loafNotYet');
    expect(hand.stage('a')).toBe('proof.soon');
    expect(['preheating', 'holding']).toContain(hand.stage('oven'));
    expect(hand.kitchen.bakes['a']!.context.marks['likely']!).toBeGreaterThan(likely!);
    expect(hand.deadline('a')! - hand.now).toBeGreaterThanOrEqual(20 * MINUTE);
    hand.takeBack();
    expect(hand.kitchen.bakes['a']!.context.marks['likely']).toBe(likely);
  });

  it('looked at long before its end wants no oven yet', () => {
    const hand = walkTo(started(), 'a', 'proof.warm');
    hand.turn(5);
    hand.press('a', 'loafSeen');
    hand.answer('a', { dent: 'springs' });
    hand.press('a', 'loafNotYet');
    expect([hand.stage('a'), hand.stage('oven')]).toEqual(['proof.warm', 'off']);
    // The next look comes before the oven has to go on.
    hand.turnTo(hand.deadline('a')!);
    expect([hand.stage('a'), hand.stage('oven')]).toEqual(['proof.poke', 'off']);
  });

  it('given up turns the oven off', () => {
    const hand = walkTo(started(), 'a', 'proof.soon');
    hand.press('oven', 'ovenOn');
    hand.press('a', 'ended');
    expect(hand.stage('oven')).toBe('turnOff');
  });

  it('taken back to before the oven was wanted lets the call go', () => {
    const hand = walkTo(started(), 'a', 'proof.soon');
    expect(hand.ringing).toBe('oven:turnOn');
    hand.takeBack();
    expect(hand.stage('a')).toBe('shape.basket');
    expect([hand.stage('oven'), hand.ringing]).toEqual(['off', null]);
  });

  it('that comes soon keeps the oven on behind another bake’s last loaf', () => {
    const hand = started(TIN, 'proof.soon');
    hand.start('b', 'oven.queued', ['b1'], RECIPE);
    walkTo(hand, 'oven', 'unload', 'b');
    stepOn(hand, 'oven');
    expect(hand.stage('oven')).toBe('recover');
    hand.turnTo(hand.deadline('oven')!);
    expect(hand.stage('oven')).toBe('holding');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('whose oven was to go off calls for it anew: a wait that time alone began had no end', () => {
    const hand = walkTo(started(), 'a', 'proof.warm');
    hand.start('b', 'oven.queued', ['b1'], RECIPE);
    walkTo(hand, 'oven', 'preheating', 'b');
    hand.press('b', 'ended');
    expect(hand.stage('oven')).toBe('turnOff');
    hand.turnTo(hand.deadline('a')!);
    expect([hand.stage('a'), hand.stage('oven')]).toEqual(['proof.soon', 'turnOn']);
    expect(hand.ringing).toBe('oven:turnOn');
    hand.press('oven', 'ovenOn');
    expect(hand.deadline('oven')).not.toBeNull();
    expect(hand.replayed().trouble).toBeNull();
  });
});
