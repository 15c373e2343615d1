import { describe, expect, it } from 'vitest';
import { kitchenAt } from '../../machines/kitchen/position.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { HOUR, MINUTE, type Instant } from '../../src/core/units.ts';
import { laidDay } from '../fakes/laid-day.ts';
import { Hand } from './support/hand.ts';
import { at, stepOn, walkTo } from './support/onward.ts';
import { RECIPE } from './support/recipe.ts';

const PLAN = laidDay();
const NAME = 'Cherry and hazelnut';
const WARM = { ...RECIPE, process: { ...RECIPE.process, retard: 0, counter: 0, warm: 120 } };

/** A plan of the bake that is there, with its oven on at an instant. */
const ovenAt = (ovenOn: Instant, bake = 'a', sequence = 1): Deed => {
  const [asked] = PLAN.ask.bakes;
  const oven = PLAN.touches.find(({ name }) => name === 'oven on')!;
  const plan: DayPlan = {
    ...PLAN,
    sequence,
    ask: { ...PLAN.ask, bakes: [{ ...asked!, bake }] },
    touches: [{ ...oven, at: ovenOn }],
  };
  return { kind: 'plan', plan };
};
const start = (planned: { plan: string; name: string }): Deed => ({
  kind: 'start',
  bake: 'a',
  loaves: ['a1', 'a2'],
  from: 'levain.feed',
  recipe: RECIPE,
  kitchen: 22,
  planned,
});
const bakeOf = (hand: Hand): string | null | undefined => hand.kitchen.plan?.ask.bakes[0]!.bake;

describe('a plan in the log', () => {
  it('is heard of by no machine, and replayed', () => {
    const hand = at(new Hand(), 'bulk.fold');
    const before = hand.fold.positionOf(hand.kitchen);
    expect(hand.do({ kind: 'plan', plan: PLAN })).toBe(true);
    expect(hand.fold.positionOf(hand.kitchen)).toEqual(before);
    expect(hand.kitchen.plan).toEqual(PLAN);
    const again = hand.replayed();
    expect([again.trouble, again.kitchen.plan]).toEqual([null, PLAN]);
  });

  it('is not taken where the log could not be read again, nor given up where it does not stand', () => {
    const hand = new Hand();
    const asked = (kitchen: number) => ({ ...PLAN.ask, kitchen });
    for (const wrong of [{ touches: [] }, { id: '' }, { sequence: 0 }, { ask: asked(NaN) }])
      expect(hand.do({ kind: 'plan', plan: { ...PLAN, ...wrong } })).toBe(false);
    expect(hand.do({ kind: 'planOff', plan: PLAN.id })).toBe(false);
    expect(hand.records).toEqual([]);
  });

  it('goes and comes with take-backs, plan by plan', () => {
    const hand = new Hand();
    hand.do({ kind: 'plan', plan: PLAN });
    hand.turn(5);
    hand.do({ kind: 'plan', plan: { ...PLAN, sequence: 2 } });
    hand.do({ kind: 'planOff', plan: PLAN.id });
    const sequences = [hand.kitchen.plan?.sequence];
    while (hand.takeBack()) sequences.push(hand.kitchen.plan?.sequence);
    expect(sequences).toEqual([undefined, 2, 1, undefined]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('knows its begun bake, and no longer once the start is taken back', () => {
    const hand = new Hand();
    hand.do({ kind: 'plan', plan: PLAN });
    hand.do(start({ plan: PLAN.id, name: NAME }));
    expect(bakeOf(hand)).toBe('a');
    expect(hand.takeBack()).toBe(true);
    expect(bakeOf(hand)).toBeNull();
    expect(hand.replayed().kitchen.plan).toEqual(PLAN);
  });

  it('stands on across a jump, and a take-back after it', () => {
    const hand = new Hand();
    hand.do({ kind: 'plan', plan: PLAN });
    hand.do(start({ plan: PLAN.id, name: NAME }));
    at(hand, 'bulk.fold');
    hand.do({ kind: 'jump', position: hand.fold.positionOf(hand.kitchen) });
    expect(bakeOf(hand)).toBe('a');
    hand.press('a', 'folded');
    expect(hand.takeBack()).toBe(true);
    expect([bakeOf(hand), hand.stage('a')]).toEqual(['a', 'bulk.fold']);
    hand.do({ kind: 'planOff', plan: PLAN.id });
    expect(hand.takeBack()).toBe(true);
    const { kitchen, trouble } = hand.replayed();
    expect([trouble, kitchen.plan?.ask.bakes[0]!.bake]).toEqual([null, 'a']);
    expect(kitchenAt(hand.fold.positionOf(kitchen), kitchen.starts, hand.machines).plan).toBeNull();
  });
});

describe('an oven that a plan has on', () => {
  const cold = () => at(new Hand({ wait: waitFor }), 'proof.retard', 'levain.feed');
  const hours = (hand: Hand, n: number): Instant => Math.ceil(hand.now / HOUR + n) * HOUR;

  it('calls the loaf in the fridge at its minute, and the oven goes on by the look’s ready', () => {
    const hand = cold();
    const planned = hours(hand, 11);
    expect(hand.deadline('a')).not.toBe(planned);
    expect(hand.do(ovenAt(planned))).toBe(true);
    expect(hand.deadline('a')).toBe(planned);
    hand.turnTo(planned);
    expect(hand.stage('a')).toBe('proof.look');
    hand.press('a', 'loafReady');
    expect(hand.stage('oven')).toBe('turnOn');
    const again = hand.replayed();
    expect(again.trouble).toBeNull();
  });

  it('is known before the fridge too, moves with a re-plan, and back with its take-back', () => {
    const hand = at(new Hand({ wait: waitFor }), 'proof.toFridge', 'levain.feed');
    const planned = hours(hand, 12);
    hand.do(ovenAt(planned));
    hand.press('a', 'inFridge');
    expect(hand.deadline('a')).toBe(planned);
    hand.turn(60);
    hand.do(ovenAt(planned + HOUR, 'a', 2));
    expect(hand.deadline('a')).toBe(planned + HOUR);
    hand.takeBack();
    expect(hand.deadline('a')).toBe(planned);
    const runs = hand.modelRuns;
    expect(hand.fold.wanted(hand.replayed().kitchen).alarmAt).toBe(planned);
    expect(hand.modelRuns).toBe(runs);
  });

  it('is as without one where the plan is given up, or is of another bake', () => {
    const hand = cold();
    const own = hand.deadline('a')!;
    hand.do(ovenAt(hours(hand, 11), 'another'));
    expect(hand.deadline('a')).toBe(own);
    hand.do(ovenAt(hours(hand, 11)));
    hand.do({ kind: 'planOff', plan: PLAN.id });
    expect(hand.deadline('a')).toBe(own);
  });

  it('never has a loaf looked at later than it is likely past, nor within its first hour', () => {
    const hand = cold();
    const own = hand.deadline('a')!;
    hand.do(ovenAt(hand.now + 500 * HOUR));
    const past = hand.deadline('a')!;
    expect(past).toBeGreaterThan(own);
    expect(past).toBeLessThan(hand.now + 49 * HOUR);
    hand.do(ovenAt(hand.now + 30 * MINUTE, 'a', 2));
    expect(hand.deadline('a')).toBe(own);
  });

  it('after a "not yet" is looked at by its minute at the latest', () => {
    const hand = cold();
    hand.turn(540);
    const planned = hand.now + 70 * MINUTE;
    hand.do(ovenAt(planned));
    hand.press('a', 'loafSeen');
    hand.answer('a', { grown: 'little', rim: 'below', dent: 'springs' });
    hand.press('a', 'loafNotYet');
    expect(hand.stage('a')).toBe('proof.retard');
    expect(hand.deadline('a')!).toBeLessThanOrEqual(planned);
    hand.turnTo(planned);
    hand.answer('a', { grown: 'little', rim: 'below', dent: 'springs' });
    hand.press('a', 'loafNotYet');
    expect(hand.deadline('a')!).toBeGreaterThan(planned + 30 * MINUTE);
  });

  it('is called for a warm proof at its minute, or sooner where signs want it sooner', () => {
    const warm = () => {
      const hand = new Hand({ wait: waitFor });
      hand.start('a', 'shape.divide', ['a1'], WARM);
      return at(hand, 'proof.warm');
    };
    const plain = warm();
    const own = plain.deadline('a')!;
    const sooner = warm();
    sooner.do(ovenAt(own - 20 * MINUTE));
    expect(sooner.deadline('a')).toBe(own - 20 * MINUTE);
    sooner.turnTo(own - 20 * MINUTE);
    expect([sooner.stage('a'), sooner.stage('oven')]).toEqual(['proof.soon', 'turnOn']);
    const later = warm();
    later.do(ovenAt(own + 20 * MINUTE));
    expect(later.deadline('a')).toBe(own);
  });
});

describe('an oven that is hot from the bake before', () => {
  /** Two cold bakes; `b` goes into the oven half an hour after the last loaf of `a` is out. */
  const planned = (out: Instant): DayPlan => {
    const [asked] = PLAN.ask.bakes;
    const touch = (batch: string, name: string, on: Instant) => ({
      ...PLAN.touches.find((one) => one.name === 'load 1')!,
      batch,
      name,
      at: on,
    });
    return {
      ...PLAN,
      ask: {
        ...PLAN.ask,
        bakes: ['a', 'b'].map((bake) => ({ ...asked!, name: `bread ${bake}`, bake })),
      },
      touches: [
        touch('bread a', 'oven on', out - 150 * MINUTE),
        touch('bread a', 'load 2', out - 45 * MINUTE),
        touch('bread a', 'unload 2', out),
        touch('bread b', 'load 1', out + 30 * MINUTE),
      ],
    };
  };
  const stages = (hand: Hand, isPlanned: boolean): readonly (string | null)[] => {
    at(hand, 'proof.retard', 'levain.feed');
    hand.start('b', 'levain.feed');
    walkTo(hand, 'b', 'proof.retard', 'b');
    const out = hours(hand, 14);
    if (isPlanned) hand.do({ kind: 'plan', plan: planned(out) });
    const seen: (string | null)[] = [];
    walkTo(hand, 'a', 'oven.queued');
    for (let n = 0; n < 80 && hand.stage('a') !== 'cool.cooling'; n += 1) {
      if (hand.stage('b') === 'proof.look') hand.press('b', 'loafReady');
      stepOn(hand, 'oven');
      seen.push(hand.stage('oven'));
    }
    for (let n = 0; n < 9 && !['poke', 'off'].includes(hand.stage('oven')!); n += 1) {
      seen.push(hand.stage('oven'));
      stepOn(hand, 'oven');
    }
    return seen;
  };
  const hours = (hand: Hand, n: number): Instant => Math.ceil(hand.now / HOUR + n) * HOUR;

  it('stays on for the loaf that comes next: it is looked at once the last one is in', () => {
    const hand = new Hand({ wait: waitFor });
    const seen = stages(hand, true);
    expect(seen.filter((one) => one === 'preheating').length).toBeGreaterThan(0);
    expect(seen).not.toContain('turnOff');
    expect(hand.stage('oven')).toBe('poke');
    expect(hand.stage('b')).toBe('oven.queued');
    expect(hand.replayed().trouble).toBeNull();
    // Without such a plan it is turned off with its last loaf.
    expect(stages(new Hand({ wait: waitFor }), false)).toContain('turnOff');
  });
});
