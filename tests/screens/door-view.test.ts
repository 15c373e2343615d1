import { describe, expect, it } from 'vitest';
import { atDoor } from '../../machines/kitchen/at-door.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { standView } from '../../src/screens/bench/stand-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, TIN } from '../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand) => {
  const focus = focusOn(hand.kitchen, 'a')!;
  const plain = benchView(hand.kitchen, focus, hour, questionView, { heat: 'C', weight: 'g' });
  return standView(plain, hand.kitchen, hand.now);
};
const actOf = ({ slab }: ReturnType<typeof see>) =>
  slab.deed?.kind === 'press' ? slab.deed.act : null;

/** Loaves nobody saw shaped stand at a hot oven, of which nothing but signs tells. */
const joined = (loaves = ['a1'], recipe?: typeof TIN): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', loaves, recipe);
  return walkTo(hand, 'oven', 'poke');
};
/** Loaves out of the fridge after so many hours of a bake that was seen. */
const retarded = (hours: number): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'shape.divide', ['a1', 'a2']);
  walkTo(hand, 'a', 'proof.retard');
  hand.turn(hours * 60);
  if (hand.stage('a') === 'proof.retard') hand.press('a', 'loafSeen');
  hand.press('a', 'loafReady');
  return walkTo(hand, 'oven', 'poke');
};
const bakeOf = (hand: Hand) => hand.kitchen.bakes['a']!;

/** Warm loaves for pots, far over by the clock, in an oven of two pots. */
const overdue = (loaves: string[], hours = 9): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  const process = { ...RECIPE.process, retard: 0, warm: 90 };
  hand.start('a', 'shape.divide', loaves, { ...RECIPE, process });
  walkTo(hand, 'a', 'proof.warm');
  hand.turn(hours * 60);
  hand.press('a', 'loafSeen');
  hand.press('a', 'loafReady');
  walkTo(hand, 'oven', 'turnOn');
  hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
  return walkTo(hand, 'oven', 'poke');
};

describe('the poke at the oven’s door', () => {
  it('says that a cold dent alone is weak, and bakes', () => {
    for (const dent of ['springs', 'stays']) {
      const hand = joined();
      hand.answer('oven', { grown: 'notSure', dent });
      expect(actOf(see(hand))).toBe('pokeReady');
      expect(see(hand).detail).toBe('A cold dent alone says little. Bake it now.');
    }
  });

  it('lets a cold loaf that has not grown stand 60 to 120 minutes, and names them', () => {
    const hand = joined();
    hand.answer('oven', { grown: 'little', dent: 'springs' });
    expect(actOf(see(hand))).toBe('pokeNotYet');
    expect(see(hand).detail).toMatch(/leave it out 1\sh\s30, then look/);
    hand.press('oven', 'pokeNotYet');
    expect(hand.deadline('oven')! - hand.now).toBe(90 * MINUTE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('looks sooner at one that has stood, and goes by its dent then', () => {
    const hand = joined();
    hand.press('oven', 'pokeNotYet');
    hand.turnTo(hand.deadline('oven')!);
    expect(hand.stage('oven')).toBe('poke');
    hand.answer('oven', { grown: 'notSure', dent: 'springs' });
    expect(actOf(see(hand))).toBe('pokeNotYet');
    hand.press('oven', 'pokeNotYet');
    expect(hand.deadline('oven')! - hand.now).toBe(30 * MINUTE);
  });

  it('goes by the dent of a warm loaf', () => {
    const hand = joined(['a1'], TIN);
    hand.answer('oven', { grown: 'notSure', dent: 'slowly' });
    expect([actOf(see(hand)), see(hand).detail]).toEqual([
      'pokeReady',
      'Ready by its signs. Bake it now.',
    ]);
  });

  it('holds the clock against the signs of a loaf it has seen', () => {
    const hand = retarded(14);
    const { q, cold, loaf } = atDoor(hand.kitchen, bakeOf(hand));
    expect(cold).toBe(true);
    expect(q).toBeGreaterThan(0.3);
    expect(loaf).toMatchObject({ grams: 900, room: 24 });
    expect(loaf!.celsius).toBeLessThan(8);
    const longer = atDoor(retarded(40).kitchen, bakeOf(retarded(40))).q!;
    expect(longer).toBeGreaterThan(q!);
  });

  it('bakes first, with a shallow cut, what the clock has over while others wait', () => {
    const hand = retarded(90);
    expect(atDoor(hand.kitchen, bakeOf(hand)).q).toBeGreaterThan(1.35);
    hand.answer('oven', { grown: 'grown', dent: 'slowly' });
    const view = see(hand);
    expect([actOf(view), view.slab.label]).toEqual(['pokeOver', 'Bake this one first']);
    expect(view.tiles.map(({ label }) => label)).toEqual(['It’s ready', 'Bake it flat']);
  });

  it('bakes flat what is over by signs and clock; a shallow cut stays open to hands', () => {
    const hand = overdue(['a1', 'a2', 'a3']);
    hand.answer('oven', { grown: 'grown', dent: 'stays' });
    const view = see(hand);
    expect([actOf(view), view.slab.label]).toEqual(['pokeFlat', 'Bake it flat']);
    expect(view.detail).toBe('Gone over, by signs and clock. Far gone: bake it flat.');
    expect(view.tiles.map(({ label }) => label)).toEqual(['It’s ready', 'Gone over']);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    const tray = see(hand);
    expect([tray.headline, tray.hazard, tray.place]).toEqual([
      'Bake this one flat',
      'hot',
      'Oven · loaf 1 of 3',
    ]);
    expect(tray.care).toMatch(/unsure of a filling, throw it out.*children stand 1 m back/);
    expect(tray.slab.deed).toMatchObject({
      act: 'loaded',
      loaves: ['a1'],
      lane: 'lane.tray',
    });
    hand.do(tray.slab.deed!);
    // Its tray is taken: the next one over may only take a pot.
    hand.answer('oven', { grown: 'grown', dent: 'stays' });
    expect([actOf(see(hand)), see(hand).tiles.map(({ label }) => label)]).toEqual([
      'pokeOver',
      ['It’s ready'],
    ]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('lets hands that find it far gone bake a cold loaf flat whose dent stays', () => {
    const hand = joined(['a1', 'a2']);
    hand.answer('oven', { dent: 'stays', grown: 'grown' });
    const labels = () => see(hand).tiles.map(({ label }) => label);
    expect([actOf(see(hand)), labels()]).toEqual([
      'pokeReady',
      ['Not yet', 'Gone over', 'Bake it flat'],
    ]);
    const springs = joined(['a1', 'a2']);
    springs.answer('oven', { dent: 'springs', grown: 'grown' });
    expect(see(springs).tiles.map(({ label }) => label)).toEqual(['Not yet', 'Gone over']);
  });

  it('says at the tray what is in it, and never that it is in a pot', () => {
    const hand = overdue(['a1', 'a2']);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    hand.do(see(hand).slab.deed!);
    for (const act of ['pokeReady', 'scored']) hand.press('oven', act);
    hand.press('oven', 'loaded', { loaves: ['a2'], lane: 'lane.left' });
    hand.turnTo(hand.deadline('lane.left')!);
    hand.press('lane.left', 'lidOff');
    hand.press('lane.tray', 'taskDone', { item: 'rack' });
    const seen: string[] = [];
    for (const act of ['colourSeen', 'crustReady', 'unloaded']) {
      const view = see(hand);
      expect(view.who).toBe('lane.tray');
      expect(view.place).toBe('Tray · loaf 1 of 2');
      seen.push(view.headline);
      expect([view.headline, view.detail, view.spoken, view.care].join(' ')).not.toMatch(/\bpot\b/);
      expect(hand.press('lane.tray', act)).toBe(true);
    }
    expect(seen).toEqual([
      'Let the flat bread colour',
      'What colour is the crust?',
      'Take the flat bread out',
    ]);
  });

  it('says of a slow loaf, where others wait, that it goes last', () => {
    const hand = overdue(['a1', 'a2'], 0);
    hand.answer('oven', { grown: 'little', dent: 'springs' });
    const view = see(hand);
    expect([actOf(view), view.slab.label, view.slab.then]).toEqual([
      'pokeNotYet',
      'Not yet',
      'it goes last',
    ]);
    expect(view.detail).toBe('Not there yet: it goes last.');
  });

  it('knows nothing of a loaf that nobody saw shaped', () => {
    const hand = joined();
    expect(atDoor(hand.kitchen, bakeOf(hand)).q).toBeNull();
  });
});
