import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at, stepOn, walkToEnd } from './support/onward.ts';
import { RECIPE, STONE, TIN } from './support/recipe.ts';

const context = (hand: Hand) => hand.kitchen.oven.context;
const ovenTo = (hand: Hand, stage: string) => {
  for (let n = 0; hand.stage('oven') !== stage; n += 1) {
    if (n > 60 || !stepOn(hand, 'oven'))
      throw new Error(`The oven stays at ${hand.stage('oven')}.`);
  }
};

/** Two bakes at the oven, a a minute before b. */
const both = () => {
  const hand = new Hand();
  hand.start('a', 'proof.look');
  hand.start('b', 'proof.look');
  hand.press('a', 'loafReady');
  hand.turn(1);
  hand.press('b', 'loafReady');
  return hand;
};

describe('two bakes at once', () => {
  it('queue their loads one after the other, never mixed', () => {
    const hand = both();
    expect(context(hand).waiting).toEqual(['a1', 'a2', 'b1', 'b2']);
    const loads: (readonly string[])[] = [];
    for (let n = 0; n < 4; n += 1) {
      ovenTo(hand, 'lidded');
      loads.push(loavesIn(hand.kitchen));
      ovenTo(hand, 'unload');
      stepOn(hand, 'oven');
    }
    expect(loads).toEqual([['a1'], ['a2'], ['b1'], ['b2']]);
    expect(hand.stage('oven')).toBe('turnOff');
    expect(hand.stage('b')).toBe('cool.cooling');
  });

  it('go on each when its own last loaf is out, and not before', () => {
    const hand = both();
    const seen: string[] = [];
    for (let n = 0; n < 4; n += 1) {
      ovenTo(hand, 'unload');
      stepOn(hand, 'oven');
      seen.push(`${hand.stage('a')} ${hand.stage('b')}`);
    }
    expect(seen).toEqual([
      'oven.queued oven.queued',
      'cool.cooling oven.queued',
      'cool.cooling oven.queued',
      'cool.cooling cool.cooling',
    ]);
  });

  it.each([
    ['a pot', 'a tin', RECIPE, TIN],
    ['a pot', 'a stone', RECIPE, STONE],
    ['a tin', 'a pot', TIN, RECIPE],
    ['a stone', 'a tin', STONE, TIN],
  ])(
    'of %s and then %s: what the next one bakes in is made ready once the oven is empty',
    (...of) => {
      const [, , first, second] = of;
      const hand = new Hand({ wait: waitFor });
      hand.start('a', 'oven.queued', ['a1'], first);
      hand.start('b', 'oven.queued', ['b1'], second);
      ovenTo(hand, 'unload');
      expect(context(hand).vessel).toBe(first.process.vessel);
      stepOn(hand, 'oven');
      expect(context(hand)).toMatchObject({ waiting: ['b1'], vessel: second.process.vessel });
      ovenTo(hand, 'load');
      expect(hand.press('oven', 'loaded', { loaves: ['b1'] })).toBe(true);
      walkToEnd(hand, 'b');
      expect(hand.replayed().trouble).toBeNull();
    },
  );

  it('may be mixed by the baker, and both go on when the mixed load is out', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1']);
    ovenTo(hand, 'load');
    expect(hand.press('oven', 'loaded', { loaves: ['b1', 'a1'] })).toBe(true);
    ovenTo(hand, 'unload');
    hand.press('oven', 'unloaded');
    expect([hand.stage('a'), hand.stage('b')]).toEqual(['cool.cooling', 'cool.cooling']);
    expect(hand.deadline('a')).toBe(hand.deadline('b'));
    expect(hand.replayed().trouble).toBeNull();
  });

  it('a refused unload moves neither', () => {
    const hand = both();
    ovenTo(hand, 'open');
    expect(hand.press('oven', 'unloaded')).toBe(false);
    expect([hand.stage('a'), hand.stage('b')]).toEqual(['oven.queued', 'oven.queued']);
  });

  it('the one that comes while a load is in waits behind, and the oven is not told to go off', () => {
    const hand = at(new Hand(), 'proof.look', 'proof.retard');
    hand.start('b', 'oven.queued', ['b1']);
    ovenTo(hand, 'lidded');
    hand.press('a', 'loafReady');
    expect(hand.stage('oven')).toBe('lidded');
    ovenTo(hand, 'unload');
    hand.press('oven', 'unloaded');
    expect(hand.stage('oven')).toBe('recover');
    expect(context(hand)).toMatchObject({ waiting: ['a1', 'a2'], out: ['b1'] });
  });
});

describe('a bake that is ended', () => {
  it('while it is queued leaves the oven to the other', () => {
    const hand = both();
    hand.press('a', 'ended');
    expect(context(hand).waiting).toEqual(['b1', 'b2']);
    walkToEnd(hand, 'b');
  });

  it.each(['turnOn', 'preheating', 'poke', 'standing', 'before', 'score', 'load', 'recover'])(
    'as the only one, with the oven at %s, sends the oven off, the hot one by a press',
    (stage) => {
      const hand = new Hand();
      hand.start('a', 'oven.queued');
      if (stage === 'standing') {
        ovenTo(hand, 'poke');
        hand.press('oven', 'pokeNotYet');
      }
      ovenTo(hand, stage);
      hand.press('a', 'ended');
      expect(hand.stage('oven')).toBe(stage === 'turnOn' ? 'off' : 'turnOff');
      // A hot oven that stays on calls after ten minutes.
      const alarmAt = stage === 'turnOn' ? null : hand.now + 10 * MINUTE;
      expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt, ringing: null });
      hand.takeBack();
      expect(hand.stage('oven')).toBe(stage);
    },
  );

  it('with one loaf in the pot and one out goes on without it; the loaf is still unloaded', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    ovenTo(hand, 'recover');
    ovenTo(hand, 'lidded');
    hand.press('a', 'ended');
    expect(loavesIn(hand.kitchen)).toEqual(['a2']);
    expect(context(hand)).toMatchObject({ out: ['a1'], waiting: [] });
    ovenTo(hand, 'turnOff');
    expect(loavesIn(hand.kitchen)).toEqual([]);
    expect(context(hand)).toMatchObject({ out: ['a1', 'a2'] });
    ovenTo(hand, 'off');
  });

  it('takes its calls with it', () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.turn(180);
    expect(hand.ringing).toBe('a:bulk.look');
    hand.press('a', 'ended');
    expect(hand.ringing).toBeNull();
  });
});

describe('loaves that come while the oven is to be turned off', () => {
  it('make it preheat again, which a press cuts short', () => {
    const hand = new Hand();
    hand.start('b', 'proof.look');
    hand.start('a', 'oven.queued', ['a1']);
    ovenTo(hand, 'turnOff');
    hand.press('b', 'loafReady');
    expect(hand.stage('oven')).toBe('preheating');
    expect(hand.deadline('oven')).toBe(hand.now + 45 * 60_000);
    expect(hand.press('oven', 'ovenHot')).toBe(true);
    expect(hand.stage('oven')).toBe('poke');
    hand.takeBack();
    hand.takeBack();
    expect(hand.stage('oven')).toBe('turnOff');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('and are ended again leave it at its turning off', () => {
    const hand = new Hand();
    hand.start('b', 'proof.look');
    hand.start('a', 'oven.queued', ['a1']);
    ovenTo(hand, 'turnOff');
    hand.press('b', 'loafReady');
    hand.press('b', 'ended');
    expect(hand.stage('oven')).toBe('turnOff');
  });
});

/** Two doughs at rest after the mix, whose salt is due in the same second. */
const sameSecond = (): Hand => {
  const hand = new Hand();
  for (const bake of ['a', 'b']) {
    hand.start(bake, 'mix.first');
    hand.press(bake, 'mixed');
  }
  hand.turnTo(hand.deadline('a')!);
  return hand;
};
const calling = (hand: Hand) => hand.fold.callsOf(hand.kitchen).map(({ who }) => who);

describe('two bakes due in the same second', () => {
  it('both call, in one queue, of which one rings at a time', () => {
    const hand = sameSecond();
    expect(calling(hand)).toEqual(['a', 'b']);
    expect(hand.ringing).toBe('a:mix.salt');
    expect(hand.heard('b')).toBe(true);
    expect(hand.ringing).toBe('a:mix.salt');
    expect(hand.heard('a')).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(calling(hand)).toEqual(['a', 'b']);
  });

  it('answering one leaves the other to ring, whichever is answered', () => {
    for (const [done, left] of [
      ['a', 'b'],
      ['b', 'a'],
    ] as const) {
      const hand = sameSecond();
      hand.answer(done, { salt: 'in', secondWater: 'in' });
      expect([hand.stage(done), hand.stage(left)]).toEqual(['mix.work', 'mix.salt']);
      expect(calling(hand)).toEqual([left]);
      expect(hand.ringing).toBe(`${left}:mix.salt`);
      expect(hand.replayed().trouble).toBeNull();
    }
  });

  it('taking back what answered one lets both ring again, hushed or not', () => {
    const hand = sameSecond();
    hand.heard('a');
    hand.heard('b');
    hand.answer('b', { salt: 'in', secondWater: 'in' });
    hand.takeBack();
    expect(calling(hand)).toEqual(['a', 'b']);
    expect(hand.ringing).toBe('a:mix.salt');
    hand.heard('a');
    expect(hand.ringing).toBe('b:mix.salt');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('with the lid due in that second, the lid rings first', () => {
    const hand = at(new Hand(), 'load', 'oven.queued');
    hand.start('c', 'proof.counter');
    hand.turn(2);
    stepOn(hand, 'oven');
    const lid = hand.deadline('oven')!;
    expect(hand.deadline('c')).toBe(lid);
    hand.turnTo(lid);
    expect(calling(hand)).toEqual(['lane.pot', 'c']);
    expect(hand.ringing).toBe('lane.pot:lift');
    hand.press('oven', 'lidOff');
    expect(hand.ringing).toBe('c:proof.toFridge');
  });
});
