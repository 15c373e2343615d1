import { describe, expect, it } from 'vitest';
import { speakOf } from '../../src/app/speak-of.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { bakeMarks } from '../../src/core/records/bake-marks.ts';
import { shortName } from '../../src/core/speech/short-name.ts';
import { bakeName, bakeSaid } from '../../src/screens/bake-name.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { frontOf, openingBake } from '../../src/screens/front.ts';
import { othersOf } from '../../src/screens/others.ts';
import { Hand } from '../machines/support/hand.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { walkTo } from '../machines/support/onward.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const UNITS = { heat: 'C', weight: 'g' } as const;
const LANE = { ...RECIPE, formula: { ...RECIPE.formula, name: 'Lane wheat' } };
const others = (hand: Hand, shown: string | null) =>
  othersOf(hand.kitchen, shown, bakeMarks(hand.records), hour);
const ringing = (hand: Hand) => hand.fold.wanted(hand.kitchen).ringing;
const placeOf = (hand: Hand, bake: string) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, bake)!, hour, null, UNITS).place;

/** Two bakes whose waits end in the same second: b's fold (act) and a's look. */
const sameSecond = () => {
  const hand = new Hand();
  hand.start('a', 'bulk.proving');
  hand.start('b', 'mix.first', ['b1'], LANE);
  const due = hand.deadline('a')!;
  hand.turnTo(due - 30 * 60_000);
  hand.press('b', 'mixed');
  expect(hand.deadline('b')).toBe(due);
  hand.turnTo(due);
  return hand;
};

describe('the other running bakes', () => {
  it('stand with mark, name, what they wait for and when, overdue first', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    hand.start('b', 'bulk.proving', ['b1'], LANE);
    hand.start('c', 'proof.retard', ['c1'], LANE);
    const look = hand.deadline('b')!;
    expect(others(hand, 'a')).toMatchObject([
      { id: 'b', mark: 2, waits: 'next look', at: look, late: false },
      { id: 'c', mark: 3, at: hand.deadline('c'), late: false },
    ]);
    hand.turnTo(hand.deadline('c')!);
    hand.heard('b');
    expect(others(hand, 'a').map(({ id, waits, late }) => [id, waits, late])).toEqual([
      ['b', 'look now', true],
      ['c', 'look now', true],
    ]);
    expect(others(hand, 'b')).toMatchObject([
      { id: 'c', late: true },
      { id: 'a', waits: 'your turn', at: null },
    ]);
  });

  it('are none while one runs, and its place has no name before it', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    expect(others(hand, 'a')).toEqual([]);
    expect(placeOf(hand, 'a')).toBe('Bulk · Dough rises');
  });

  it('say whose loaf the oven has, and whose turn is next', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    hand.start('b', 'oven.queued', ['b1'], LANE);
    walkTo(hand, 'oven', 'lidded');
    expect(others(hand, 'a')).toMatchObject([{ id: 'b', waits: 'oven next', at: null }]);
    expect(placeOf(hand, 'b')).toBe(
      `Lane wheat · Oven · ${bakeName(hand.kitchen, 'a', hour)} loaf`,
    );
  });

  it('show a bake whose loaves come next what the oven is at, and never a press that does nothing', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1'], LANE);
    walkTo(hand, 'oven', 'lidded');
    const view = benchView(hand.kitchen, focusOn(hand.kitchen, 'b')!, hour, null, UNITS);
    expect(view).toMatchObject({
      who: 'lane.pot',
      stage: 'lidded',
      deadline: hand.deadline('oven'),
    });
    expect(view.slab.deed).toMatchObject({ who: 'lane.pot', act: 'lidOff' });
    expect(view.place).toBe(`Lane wheat · Oven · ${bakeName(hand.kitchen, 'a', hour)} loaf`);
    expect(others(hand, 'a')).toMatchObject([{ id: 'b', waits: 'oven next', at: null }]);
  });

  it('judge a crust by the recipe of its own loaf, whichever bench shows it', () => {
    const slow = { ...LANE, process: { ...LANE.process, open: 40 } };
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1'], slow);
    walkTo(hand, 'oven', 'judge');
    hand.answer('oven', { colour: 'golden', base: 'hollow', core: 'ready' });
    for (const bake of ['a', 'b']) {
      const focus = focusOn(hand.kitchen, bake)!;
      const { slab } = benchView(hand.kitchen, focus, hour, questionView, UNITS);
      expect(slab.deed).toMatchObject({ who: 'lane.pot', act: 'crustReady' });
    }
  });

  it('leave the pot of a bake that was ended to the next one: its lid calls there', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1', 'b2'], LANE);
    hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
    walkTo(hand, 'oven', 'load');
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' });
    hand.press('a', 'ended');
    expect(hand.fold.stageOf(hand.kitchen.oven)).toBe('poke');
    hand.turnTo(hand.deadline('lane.left')!);
    expect(ringing(hand)).toMatchObject({ who: 'lane.left', stage: 'lift', kind: 'hot' });
    expect(openingBake(hand.kitchen, hand.records)).toBe('b');
    expect(focusOn(hand.kitchen, 'b')!.who).toBe('lane.left');
  });
});

describe('the name of a bake', () => {
  it('is the first words of its bread', () => {
    expect(
      ['Cherry and hazelnut', 'Lane wheat', 'Olive and seed', 'Pumpernickel loaf'].map(shortName),
    ).toEqual(['Cherry', 'Lane wheat', 'Olive', 'Pumpernickel']);
  });

  it('has the hour it began where another runs of the same bread', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh', ['a1'], LANE);
    expect(bakeName(hand.kitchen, 'a', hour)).toBe('Lane wheat');
    const began = hour(hand.now);
    hand.turn(95);
    hand.start('b', 'mix.weigh', ['b1'], LANE);
    expect(bakeName(hand.kitchen, 'a', hour)).toBe(`Lane wheat ${began}`);
    expect(bakeName(hand.kitchen, 'b', hour)).toBe(`Lane wheat ${hour(hand.now)}`);
    expect(bakeSaid(hand.kitchen, 'a', hour)).not.toBe(bakeSaid(hand.kitchen, 'b', hour));
  });
});

describe('two deadlines in the same second', () => {
  it('ring one after the other, the act before the look, and each comes to the front', () => {
    const hand = sameSecond();
    expect(hand.ringing).toBe('b:mix.salt');
    expect(frontOf(hand.kitchen, ringing(hand), 'a')).toBe('b');
    hand.heard('b');
    expect(hand.ringing).toBe('a:bulk.look');
    expect(frontOf(hand.kitchen, ringing(hand), 'b')).toBe('a');
    expect(others(hand, 'a')).toMatchObject([{ id: 'b', late: true, waits: 'do it now' }]);
    hand.heard('a');
    expect(frontOf(hand.kitchen, ringing(hand), 'a')).toBeNull();
    expect(hand.kitchen.attention.context.calls).toHaveLength(2);
  });

  it('say each whose it is', () => {
    const hand = sameSecond();
    const said = hand.says
      .slice(-2)
      .map((say) => speakOf(say, hand.kitchen, hour, UNITS, EQUIPMENT));
    expect(said).toContain('It’s time: the salt goes in, Lane wheat bake.');
    expect(said).toContain(`Come and look: the dough, ${bakeSaid(hand.kitchen, 'a', hour)}.`);
  });
});

describe('what comes to the front', () => {
  it('is never taken from a hot call that is hushed and not done', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    walkTo(hand, 'oven', 'lidded');
    hand.start('b', 'mix.first', ['b1'], LANE);
    hand.press('b', 'mixed');
    hand.turnTo(Math.max(hand.deadline('oven')!, hand.deadline('b')!));
    expect(hand.ringing).toBe('lane.pot:lift');
    hand.heard('oven');
    expect(hand.ringing).toBe('b:mix.salt');
    expect(frontOf(hand.kitchen, ringing(hand), 'a')).toBeNull();
    hand.press('oven', 'lidOff');
    expect(frontOf(hand.kitchen, ringing(hand), 'a')).toBe('b');
  });

  it('after a reload is what has called, else the bake last worked at', () => {
    const hand = new Hand();
    expect(openingBake(hand.kitchen, hand.records)).toBeNull();
    hand.start('a', 'bulk.proving');
    hand.start('b', 'mix.first', ['b1'], LANE);
    expect(openingBake(hand.kitchen, hand.records)).toBe('b');
    hand.dough('a', 25);
    hand.press('b', 'mixed');
    expect(openingBake(hand.kitchen, hand.records)).toBe('b');
    hand.turnTo(hand.deadline('a')!);
    hand.heard('b');
    hand.heard('a');
    hand.press('b', 'ended');
    expect(openingBake(hand.kitchen, hand.records)).toBe('a');
  });

  it('is the oven’s own bench where it is to be turned off', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh', ['a1'], LANE);
    hand.start('b', 'oven.queued', ['b1']);
    walkTo(hand, 'oven', 'turnOff', 'b');
    expect(
      frontOf(hand.kitchen, { id: 'x', who: 'oven', stage: 'turnOff', kind: 'act', since: 0 }, 'a'),
    ).toBe('b');
  });
});
