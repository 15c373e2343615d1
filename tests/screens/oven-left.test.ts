import { describe, expect, it } from 'vitest';
import { speakOf } from '../../src/app/speak-of.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { bakeMarks } from '../../src/core/records/bake-marks.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { bakeOf, focusOn } from '../../src/screens/focus.ts';
import { frontOf, openingBake } from '../../src/screens/front.ts';
import { othersOf } from '../../src/screens/others.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn, walkTo } from '../machines/support/onward.ts';
import { TIN } from '../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const UNITS = { heat: 'C', weight: 'g' } as const;
const see = (hand: Hand, bake: string) => {
  const focus = focusOn(hand.kitchen, bake);
  return focus && benchView(hand.kitchen, focus, hour, questionView, UNITS);
};
const others = (hand: Hand, shown: string | null) =>
  othersOf(hand.kitchen, shown, bakeMarks(hand.records), hour).map(({ id }) => id);

/** A bake given up while the oven heats for it. */
const givenUp = (hand = new Hand({ wait: waitFor })): Hand => {
  hand.start('a', 'oven.queued', ['a1'], TIN);
  walkTo(hand, 'oven', 'preheating');
  hand.press('a', 'ended');
  return hand;
};

describe('an oven left hot by a bake that is over', () => {
  it('is asked off on that bake’s bench, in the words of its vessel, until it is off', () => {
    const hand = givenUp();
    expect(hand.kitchen.bakes).toEqual({});
    const view = see(hand, 'a');
    expect(view).toMatchObject({
      who: 'oven',
      stage: 'turnOff',
      headline: 'Turn the oven off',
      hazard: 'machine',
      third: null,
    });
    expect(view!.detail).toMatch(/tins/);
    expect(view!.care).toMatch(/hot/);
    expect(view!.slab.deed).toMatchObject({ who: 'oven', act: 'ovenOff' });
    hand.press('oven', 'ovenOff');
    expect(focusOn(hand.kitchen, 'a')).toBeNull();
    expect(openingBake(hand.kitchen, hand.records)).toBeNull();
  });

  it('is what a page opens on after a reload, and is spoken', () => {
    const hand = givenUp();
    expect(openingBake(hand.replayed().kitchen, hand.records)).toBe('a');
    const spoken = speakOf({ who: 'oven', stage: 'turnOff' }, hand.kitchen, hour, UNITS, EQUIPMENT);
    expect(spoken).toMatch(/^Turn the oven off.*Children/);
  });

  it('stands beside other running bakes and on the start, by the name of its bake', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('b', 'bulk.proving', ['b1']);
    givenUp(hand);
    expect(others(hand, 'b')).toEqual(['a']);
    expect(others(hand, null)).toContain('a');
    expect(see(hand, 'b')!.who).toBe('b');
    expect(see(hand, 'a')!.stage).toBe('turnOff');
    expect(see(hand, 'a')!.place).toMatch(/^\S/);
    hand.press('oven', 'ovenOff');
    expect(others(hand, 'b')).toEqual([]);
  });

  it('walks on from a load whose bake is over: its lid call finds a bench', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    walkTo(hand, 'oven', 'lidded');
    hand.press('a', 'ended');
    hand.turnTo(hand.deadline('oven')!);
    const { ringing } = hand.fold.wanted(hand.kitchen);
    expect(ringing).toMatchObject({ who: 'lane.pot', stage: 'lift', kind: 'hot' });
    expect(frontOf(hand.kitchen, ringing, null)).toBe('a');
    const seen = new Set<string>();
    while (hand.stage('oven') !== 'off') {
      const view = see(hand, 'a')!;
      expect(JSON.stringify(view)).not.toMatch(/undefined|NaN/);
      seen.add(view.stage);
      stepOn(hand, 'oven');
    }
    expect([...seen]).toEqual(['lift', 'open', 'judge', 'unload', 'turnOff']);
  });

  it('is nobody’s where another bake has it', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    hand.start('b', 'oven.queued', ['b1']);
    walkTo(hand, 'oven', 'preheating');
    hand.press('a', 'ended');
    expect(focusOn(hand.kitchen, 'a')).toBeNull();
    expect(bakeOf(hand.kitchen, 'oven')).toBe('b');
  });

  it('goes back to its bake when the end is taken back', () => {
    const hand = givenUp();
    expect(hand.takeBack()).toBe(true);
    expect(see(hand, 'a')).toMatchObject({ who: 'oven', stage: 'preheating' });
    expect(Object.keys(hand.kitchen.bakes)).toEqual(['a']);
  });
});
