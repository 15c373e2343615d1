import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import { ANY_POT, EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { questionView } from '../../../src/screens/bench/question-view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const pot = (litres: number) => ({ ...ANY_POT, litres });
const equipment = { ...EQUIPMENT, pots: [pot(2), pot(6)] };
const see = (hand: Hand, bake: string): BenchView => {
  const focus = focusOn(hand.kitchen, bake)!;
  return benchView(hand.kitchen, focus, hour, questionView, { heat: 'C', weight: 'g' }, equipment);
};
/** All but whose bench it is. */
const act = ({ place: _, whose: __, ...rest }: BenchView) => rest;

const WHEAT = {
  ...RECIPE,
  piece: 640,
  formula: { ...RECIPE.formula, name: 'Lane wheat', fillings: [] },
};

/** Two bakes at an oven of two pots, both of them full of the loaves of the first. */
const full = (): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', ['a1', 'a2', 'a3']);
  hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
  for (const [loaf, lane] of [
    ['a1', 'lane.left'],
    ['a2', 'lane.right'],
  ]) {
    walkTo(hand, 'oven', 'load');
    hand.press('oven', 'loaded', { loaves: [loaf], lane });
    hand.turn(3);
  }
  hand.start('b', 'oven.queued', ['b1', 'b2', 'b3', 'b4'], WHEAT);
  return hand;
};

describe('a bench that shows what another bake has in the oven', () => {
  it('says it of that bake, and names both', () => {
    const hand = full();
    const [own, other] = [see(hand, 'a'), see(hand, 'b')];
    expect([own.who, other.who]).toEqual(['lane.left', 'lane.left']);
    expect(own.place).toMatch(/^Cherry.*Left pot · loaf 1 of 3$/);
    expect(other.place).toBe('Lane wheat · Oven · Cherry loaf');
    expect(act(other)).toEqual(act(own));
  });

  it('judges its crust, and asks for its core, by that bake', () => {
    const hand = full();
    hand.press('lane.left', 'lidOff');
    hand.press('lane.left', 'colourSeen');
    hand.press('lane.right', 'lidOff');
    expect(act(see(hand, 'b'))).toEqual(act(see(hand, 'a')));
    expect(see(hand, 'b').bake).toBe('a');
  });

  it('pokes the next loaf by the bake that it is of', () => {
    const hand = full();
    for (const lane of ['lane.left', 'lane.right']) hand.press(lane, 'lidOff');
    hand.turn(1);
    for (const act of ['colourSeen', 'crustReady', 'unloaded', 'ovenHot']) {
      hand.press('lane.left', act);
    }
    expect(hand.stage('oven')).toBe('poke');
    expect([see(hand, 'a').bake, see(hand, 'b').bake]).toEqual(['a', 'a']);
    expect(act(see(hand, 'b'))).toEqual(act(see(hand, 'a')));
    // Of what it weighs, too: the heavy loaf has no room in the left pot, the bench's own would.
    walkTo(hand, 'oven', 'load');
    expect(see(hand, 'b').care).toMatch(/small/);
    expect(act(see(hand, 'b'))).toEqual(act(see(hand, 'a')));
  });

  it('of its own loaf goes by its own recipe', () => {
    const hand = full();
    hand.do({ kind: 'press', who: 'oven', act: 'loafFirst', item: 'b2' });
    for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded', 'ovenHot']) {
      hand.press('lane.left', act);
    }
    walkTo(hand, 'oven', 'load', 'b');
    hand.press('oven', 'loaded', { loaves: ['b2'], lane: 'lane.left' });
    const view = see(hand, 'b');
    expect([view.who, view.bake]).toEqual(['lane.left', 'b']);
    expect(view.place).toMatch(/^Lane wheat.*loaf 2 of 4$/);
    expect(hand.deadline('lane.left')! - hand.now).toBe(WHEAT.process.lidded * MINUTE);
  });
});
