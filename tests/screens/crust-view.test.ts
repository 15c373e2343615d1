import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, TIN } from '../machines/support/recipe.ts';

const POT = 'lane.left';
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const PLAIN: Recipe = { ...RECIPE, formula: { ...RECIPE.formula, fillings: [] } };

/** A loaf in the left pot stands at its look, its time up or so many minutes short of it. */
const judging = (recipe: Recipe = PLAIN, short = 0): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', ['a1'], recipe);
  hand.press('oven', 'ovenOn', { lanes: [POT] });
  walkTo(hand, 'oven', 'load');
  hand.press('oven', 'loaded', { loaves: ['a1'], lane: POT });
  hand.turnTo(hand.deadline(POT)!);
  hand.press(POT, 'lidOff');
  hand.turn(recipe.process.open - short);
  if (short > 0) hand.press(POT, 'colourSeen');
  expect(hand.fold.stageOf(hand.kitchen.lanes[POT]!)).toBe('judge');
  return hand;
};
const see = (hand: Hand, height: number | null = null) =>
  benchView(
    hand.kitchen,
    focusOn(hand.kitchen, 'a')!,
    hour,
    questionView,
    { heat: 'C', weight: 'g' },
    { ...EQUIPMENT, height },
  );
const tell = (hand: Hand, answers: Readonly<Record<string, string>>) => {
  hand.answer(POT, answers);
  return see(hand);
};
const actOf = ({ slab }: ReturnType<typeof see>) =>
  slab.deed?.kind === 'press' ? slab.deed.act : null;
const tilesOf = ({ tiles }: ReturnType<typeof see>) =>
  tiles.map(({ deed }) => (deed.kind === 'press' ? deed.act : null));
const probe = (hand: Hand, celsius: number) =>
  hand.measure('a', { what: 'coreTemperature', celsius });

describe('the look at the crust', () => {
  it('has the loaf out that is golden and hollow once its time is up', () => {
    const view = tell(judging(), { colour: 'golden', base: 'hollow', core: 'notSure' });
    expect(actOf(view)).toBe('crustReady');
    expect(view.detail).toBe('Golden and done: take it out.');
    expect(tilesOf(view)).toEqual(['crustNotYet', 'crustOnRack', 'crustOver']);
  });

  it('gives it five minutes more before its least time, whatever the core says', () => {
    const view = tell(judging(PLAIN, 6), { colour: 'golden', base: 'hollow', core: 'ready' });
    expect(actOf(view)).toBe('crustNotYet');
    expect(view.slab.label).toBe('5 more minutes');
    expect(view.detail).toMatch(/^Too early\./);
  });

  it('counts its time from the lid on, and not anew after every look', () => {
    const hand = judging(PLAIN, 4);
    hand.answer(POT, { colour: 'pale', base: 'hollow', core: 'notSure' });
    expect(see(hand).detail).toMatch(/^Still pale/);
    hand.press(POT, 'crustNotYet');
    expect(hand.deadline(POT)! - hand.now).toBe(5 * 60_000);
    hand.turn(5);
    const view = tell(hand, { colour: 'golden', base: 'hollow', core: 'notSure' });
    expect(actOf(view)).toBe('crustReady');
  });

  it('never goes by a core alone', () => {
    const view = tell(judging(), { colour: 'notSure', base: 'notSure', core: 'ready' });
    expect(actOf(view)).toBe('crustNotYet');
    expect(view.detail).toContain('Look at the colour');
    const pale = tell(judging(), { colour: 'pale', base: 'hollow', core: 'ready' });
    expect(actOf(pale)).toBe('crustNotYet');
  });

  it('asks for the base where a golden crust is all there is', () => {
    const view = tell(judging(), { colour: 'golden', base: 'notSure', core: 'notSure' });
    expect(actOf(view)).toBe('crustNotYet');
    expect(view.detail).toBe('The signs say too little. Five more minutes. Knock on its base.');
  });

  it('has the loaf out of the pot once, where its base is dark and it is not done', () => {
    const hand = judging();
    const view = tell(hand, { colour: 'pale', base: 'dark', core: 'notSure' });
    expect([actOf(view), view.slab.label]).toEqual(['crustOnRack', 'Out of the pot']);
    hand.press(POT, 'crustOnRack');
    expect(see(hand)).toMatchObject({ stage: 'open', headline: 'Let it finish on the rack' });
    hand.turn(5);
    const again = tell(hand, { colour: 'pale', base: 'dark', core: 'notSure' });
    expect(actOf(again)).toBe('crustNotYet');
    expect(tilesOf(again)).not.toContain('crustOnRack');
    expect(again.care).toMatch(/^Hot rack/);
    hand.press(POT, 'crustReady');
    const out = see(hand);
    expect([out.detail, out.spoken].join(' ')).not.toMatch(/\bpot\b/i);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('advises a tray below the next time where a loaf is done and dark below', () => {
    const view = tell(judging(), { colour: 'dark', base: 'dark', core: 'notSure' });
    expect(actOf(view)).toBe('crustOver');
    expect(view.detail).toContain('Next time: tray under, rack up.');
  });

  it('offers no way out of a pot to a tin', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1'], TIN);
    walkTo(hand, 'oven', 'judge');
    hand.answer('oven', { colour: 'golden', base: 'dark', core: 'low' });
    const view = see(hand);
    expect(tilesOf(view)).not.toContain('crustOnRack');
    expect(actOf(view)).not.toBe('crustOnRack');
  });
});

describe('cores that are measured at the look', () => {
  it('are keyed by one press from its question, which then is not asked', () => {
    const hand = judging();
    const question = tell(hand, { colour: 'golden', base: 'notSure' });
    expect([question.third, question.measures]).toEqual(['weigh', 'coreTemperature']);
    probe(hand, 96);
    expect(actOf(see(hand))).toBe('crustReady');
  });

  it('count by the coolest, of which a filled loaf has more than one', () => {
    const hand = judging(RECIPE);
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    probe(hand, 84);
    expect(see(hand).detail).toMatch(/Probe again, clear of the filling\.$/);
    probe(hand, 97);
    expect(actOf(see(hand))).toBe('crustNotYet');
    expect(see(hand).detail).toMatch(/Probe a third spot\.$/);
    probe(hand, 96);
    expect(actOf(see(hand))).toBe('crustReady');
  });

  it('of an earlier look are not taken for this one', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    probe(hand, 97);
    hand.press(POT, 'crustNotYet');
    hand.turn(5);
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    expect(see(hand).progress).not.toBeNull();
  });
});

describe('a kitchen high above the sea', () => {
  it('asks for less of a core, in the question and in what is judged', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    const asked = (height: number | null) =>
      [see(hand, height).slab, ...see(hand, height).tiles].map(({ label }) => label);
    expect(asked(null)).toEqual(['93 °C or more', 'Under 93 °C', 'No probe']);
    expect(asked(0)).toEqual(asked(null));
    expect(asked(1500)).toEqual(['88 °C or more', 'Under 88 °C', 'No probe']);
    probe(hand, 90);
    expect(actOf(see(hand))).toBe('crustNotYet');
    expect(actOf(see(hand, 1500))).toBe('crustReady');
  });

  it('takes the answer without a number for what was asked', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'notSure', core: 'ready' });
    expect(actOf(see(hand, 3000))).toBe('crustReady');
    expect(actOf(see(hand))).toBe('crustReady');
    const low = judging();
    low.answer(POT, { colour: 'golden', base: 'notSure', core: 'low' });
    expect(actOf(see(low, 3000))).toBe('crustNotYet');
  });

  it('asks again for a core over where water boils there, and takes no core alone', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'notSure', base: 'notSure' });
    probe(hand, 98);
    expect(see(hand, 3000).detail).toMatch(/Probe its middle again\.$/);
    hand.takeBack();
    probe(hand, 88);
    expect(actOf(see(hand, 3000))).toBe('crustNotYet');
    expect(see(hand, 3000).detail).toContain('Look at the colour');
  });
});

describe('a core that is not there yet', () => {
  it('tells how far it is, and for how long the loaf bakes on', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'hollow' });
    probe(hand, 88);
    const view = see(hand);
    expect(actOf(view)).toBe('crustNotYet');
    expect([view.slab.label, view.slab.then]).toEqual(['7 more minutes', 'then probe it again']);
    expect(view.detail).toBe('Core 88 of 93 °C. About 7\u00a0min more.');
    expect(view.spoken).toBe('Raw inside. About seven minutes more.');
    hand.press(POT, 'crustNotYet');
    expect(hand.deadline(POT)! - hand.now).toBe(7 * 60_000);
  });

  it('is told of a pale crust too, and a dark one is covered', () => {
    const pale = judging();
    pale.answer(POT, { colour: 'pale', base: 'hollow' });
    probe(pale, 88);
    expect(see(pale).spoken).toBe('Still pale. About seven minutes more.');
    const dark = judging();
    dark.answer(POT, { colour: 'dark', base: 'notSure' });
    probe(dark, 88);
    expect(see(dark).detail).toBe('Dark, but raw inside. Cover it loosely.');
    expect(see(dark).slab.label).toBe('7 more minutes');
  });

  it('gives what the bare rack and a dark base always had', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'dark' });
    probe(hand, 88);
    const labels = [see(hand).slab, ...see(hand).tiles].map(({ label }) => label);
    expect(labels).toContain('5 more minutes');
    expect(see(hand).slab.then).toBe('on the bare rack, 5 minutes');
  });

  it('leaves a pocket of filling as it is: another spot is asked for, five minutes are offered', () => {
    const hand = judging(RECIPE);
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    probe(hand, 84);
    expect(see(hand).detail).toMatch(/Probe again, clear of the filling\.$/);
    expect(see(hand).slab.label).toBe('5 more minutes');
  });

  it('is asked for again where 205 was keyed in °C, its point the keypad’s', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'notSure' });
    probe(hand, 20.5);
    expect(see(hand).detail).toMatch(/Probe its middle again\.$/);
    expect(see(hand).slab.label).toBe('5 more minutes');
    probe(hand, 96);
    expect(actOf(see(hand))).toBe('crustReady');
  });

  it('comes out of the oven by colour and core together all the same', () => {
    const hand = judging();
    hand.answer(POT, { colour: 'golden', base: 'hollow' });
    probe(hand, 88);
    expect(tilesOf(see(hand))).toContain('crustReady');
    hand.press(POT, 'crustNotYet');
    hand.turn(7);
    probe(hand, 94);
    const view = tell(hand, { colour: 'golden', base: 'hollow' });
    expect([actOf(view), view.detail]).toEqual(['crustReady', 'Golden and done: take it out.']);
  });
});
