import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { at, stepOn, walkToEnd } from './support/onward.ts';

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
      loads.push(context(hand).load);
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
      expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt: null, ringing: null });
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
    expect(context(hand)).toMatchObject({ load: ['a2'], out: ['a1'], waiting: [] });
    ovenTo(hand, 'turnOff');
    expect(context(hand)).toMatchObject({ load: [], out: ['a1', 'a2'] });
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
