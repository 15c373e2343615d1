import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { Hand } from '../machines/support/hand.ts';
import { at } from '../machines/support/onward.ts';

const hour = (instant: number): string => new Date(instant).toISOString().slice(11, 16);
const view = (hand: Hand) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, {
    heat: 'C',
    weight: 'g',
  });
const marks = (hand: Hand) => hand.kitchen.bakes['a']!.context.marks;
const pressSlab = (hand: Hand): boolean => {
  const { deed } = view(hand).slab;
  if (deed === null) throw new Error('The slab opens a keypad.');
  return hand.do(deed);
};

/** A dough in its last rise, in a room and with a dough of so many degrees. */
const proving = (celsius: number): Hand => {
  const hand = at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');
  hand.measure('a', { what: 'kitchenTemperature', celsius });
  hand.dough('a', celsius);
  return hand;
};

/** Looks at once and says what is seen, sign after sign. */
const look = (hand: Hand, signs: Readonly<Record<string, string>>): void => {
  // An ask for its rise, where one calls, is answered by what is seen.
  if (view(hand).task?.startsWith('rise'))
    hand.measure('a', { what: 'rise', percent: Number(signs['rise']), of: 'dough' });
  expect(pressSlab(hand)).toBe(true);
  expect(hand.stage('a')).toBe('bulk.look');
  expect(hand.answer('a', signs)).toBe(true);
};

const DOMED = { rise: '75', edge: 'domed', bubbles: 'many', wobble: 'jiggles', top: 'smooth' };
const FLAT = { rise: '25', edge: 'flat', bubbles: 'none', wobble: 'firm', top: 'sticky' };
const FALLEN = { rise: '50', edge: 'fallen', bubbles: 'many', wobble: 'strings', top: 'sticky' };

describe('a dough running warm, ahead of the plan, that goes to the fridge', () => {
  it('is called to be looked at about now, and told to be divided about now', () => {
    const hand = proving(27);
    const planned = marks(hand)['likely']!;
    hand.measure('a', { what: 'rise', percent: 75, of: 'dough' });
    // Seen so far, the likely hour has come much nearer, and the look with it.
    expect(planned - marks(hand)['likely']!).toBeGreaterThan(20 * MINUTE);
    expect(hand.deadline('a')! - hand.now).toBeLessThan(20 * MINUTE);
    look(hand, DOMED);
    expect(view(hand).detail).toBe('Ready, and it goes on in the fridge: divide it about now.');
    expect(view(hand).slab.label).toBe('It’s ready');
    pressSlab(hand);
    expect(hand.stage('a')).toBe('shape.divide');
  });

  it('is called at once by what is read of it, and not asked again for what was just said', () => {
    const hand = proving(27);
    hand.turn(20);
    hand.measure('a', { what: 'rise', percent: 75, of: 'dough' });
    expect(hand.stage('a')).toBe('bulk.proving');
    hand.measure('a', { what: 'edge', edge: 'domed', bubbles: 'many' });
    expect([hand.stage('a'), hand.ringing]).toEqual(['bulk.look', 'a:bulk.look']);
    hand.heard('a');
    expect(view(hand).headline).toBe('How does it move when nudged?');
    expect(view(hand).progress).toEqual({ done: 3, of: 5 });
    hand.answer('a', { wobble: 'jiggles', top: 'smooth' });
    expect(view(hand).detail).toBe('Ready, and it goes on in the fridge: divide it about now.');
    // Hands beat the model: the wait goes on, and is not cut short by what was read before.
    expect(hand.press('a', 'bulkNotYet')).toBe(true);
    expect(hand.stage('a')).toBe('bulk.proving');
    expect(hand.deadline('a')! - hand.now).toBeGreaterThanOrEqual(20 * MINUTE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is asked for everything where what was read is a while ago', () => {
    const hand = proving(27);
    hand.measure('a', { what: 'edge', edge: 'flat', bubbles: 'none' });
    hand.turn(11);
    look(hand, {});
    expect(view(hand).progress).toEqual({ done: 0, of: 5 });
  });

  it('read anew at its verdict is judged by the newer sign', () => {
    const hand = proving(27);
    look(hand, { ...DOMED, top: 'sticky' });
    expect(view(hand).slab.label).toBe('It’s ready');
    hand.turn(1);
    hand.measure('a', { what: 'edge', edge: 'fallen', bubbles: 'some' });
    expect(view(hand).slab.label).toBe('Gone over');
  });

  it('with no sign of being ahead is not hurried', () => {
    const hand = proving(27);
    const planned = marks(hand)['likely']!;
    hand.measure('a', { what: 'rise', percent: 0, of: 'dough' });
    expect(marks(hand)['likely']).toBeGreaterThan(planned);
    look(hand, FLAT);
    expect(view(hand).slab.label).toBe('Not yet');
  });
});

describe('a cold dough with a flat edge at the end of its planned time', () => {
  it('is told a window of hours, what a warm place would make of it, and when to look again', () => {
    const hand = proving(18);
    hand.turnTo(hand.now + 2 * HOUR);
    if (hand.stage('a') === 'bulk.proving') look(hand, FLAT);
    else expect(hand.answer('a', FLAT)).toBe(true);
    expect(view(hand).slab.label).toBe('Not yet');
    pressSlab(hand);
    const { window, detail, deadline } = view(hand);
    expect(window!.latest - window!.earliest).toBeGreaterThan(HOUR);
    expect(window!.earliest).toBeGreaterThan(hand.now);
    const { warmed } = marks(hand);
    // The next look stands above it, with the running time.
    expect(detail).toBe(`In a warm place, 26 °C: ready about ${hour(warmed!)}.`);
    expect(window!.likely! - warmed!).toBeGreaterThan(45 * MINUTE);
    expect(deadline! - hand.now).toBeGreaterThanOrEqual(20 * MINUTE);
    expect(deadline! - hand.now).toBeLessThanOrEqual(HOUR);
  });

  it('in a warm room is told to look again, and of no warmer place', () => {
    const hand = proving(26);
    look(hand, { ...FLAT, rise: '50' });
    pressSlab(hand);
    expect(view(hand).detail).toBe(`Next look at ${hour(marks(hand)['look']!)}. Keep it covered.`);
  });
});

describe('a dough that has gone over', () => {
  it('gets a new goal at once, and no more waiting', () => {
    const hand = proving(24);
    look(hand, FALLEN);
    const { slab, detail } = view(hand);
    expect(slab.label).toBe('Gone over');
    expect(slab.then).toBe('then bake it flat');
    expect(detail).toMatch(/bake it flat now/);
    // Hands beat the model, and no answer on the screen says that fallen dough is ready.
    expect(view(hand).tiles.map(({ label }) => label)).toEqual(['Go on anyway']);
    pressSlab(hand);
    expect(hand.stage('a')).toBe('rescue.tray');
    expect(hand.deadline('a')).toBeNull();
    expect(view(hand).headline).not.toMatch(/rise|wait|leave/i);
    // How hot and how long: a new goal is a whole one.
    expect(view(hand).detail).toMatch(/220 °C.*oiled tray, 20 to 25 minutes/);
  });

  it('whose edge has fallen is looked at now, and not left to rise', () => {
    const hand = proving(24);
    hand.turn(30);
    hand.measure('a', { what: 'edge', edge: 'fallen', bubbles: 'some' });
    expect([hand.stage('a'), hand.ringing]).toEqual(['bulk.look', 'a:bulk.look']);
    hand.heard('a');
    hand.answer('a', { rise: '50', wobble: 'strings', top: 'sticky' });
    expect(view(hand).slab.label).toBe('Gone over');
  });

  it('is not thought over by one sign alone', () => {
    const hand = proving(24);
    look(hand, { ...DOMED, wobble: 'strings' });
    expect(view(hand).slab.label).toBe('It’s ready');
  });
});
