import { describe, expect, it } from 'vitest';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { DAY, MINUTE } from '../../src/core/units.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { goldenPlanned } from './golden/planned.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo, walkToEnd } from './support/onward.ts';
import { WHOLE_BAKE } from './support/walk.ts';

const pageOf = (hand: Hand, bake = 'a') =>
  bakePage(hand.records, bake, { live: positionOf(hand.kitchen) })!;
const whole = (): Hand => {
  const hand = new Hand();
  for (const [, act] of WHOLE_BAKE) act(hand);
  return hand;
};

describe('the page of a bake', () => {
  it('is none of a bake that never was, or whose start was taken back', () => {
    const hand = new Hand();
    hand.start('a');
    hand.takeBack();
    expect([bakePage(hand.records, 'a'), bakePage(hand.records, 'b')]).toEqual([null, null]);
  });

  it('tells of a whole bake its bread, its span, its loaves, its end and its note', () => {
    const page = pageOf(whole());
    const { name, version, begun, end, note } = page;
    expect([name, version, begun, end, note]).toEqual([
      'Cherry and hazelnut',
      1,
      2,
      { how: 'handedOver' },
      'Good.',
    ]);
    // The minutes that the walk turns, summed.
    expect((page.to! - page.from) / MINUTE).toBe(1601);
  });

  it('has every stage once from its entry to the next, without a gap', () => {
    const { stages, from, to } = pageOf(whole());
    expect([stages[0]!.from, stages.at(-1)!.to]).toEqual([from, to]);
    stages.slice(1).forEach((stay, n) => expect(stages[n]!.to).toBe(stay.from));
    expect(stages.filter(({ stage }) => stage === 'bulk.fold')).toHaveLength(2);
    const rest = stages.find(({ stage }) => stage === 'mix.rest')!;
    expect(rest.to! - rest.from).toBe(30 * MINUTE);
  });

  it('forgets the stages that a take-back undid', () => {
    const hand = at(new Hand(), 'bulk.look');
    const before = pageOf(hand).stages;
    hand.press('a', 'bulkReady');
    hand.turn(3);
    hand.takeBack();
    expect(pageOf(hand).stages).toEqual(before);
    hand.turn(2);
    hand.press('a', 'bulkReady');
    const after = pageOf(hand).stages;
    expect(after.map(({ stage }) => stage)).toEqual([
      ...before.map(({ stage }) => stage),
      'shape.divide',
    ]);
    expect(after.at(-1)!.from).toBe(hand.now);
  });

  it('tells that it was ended early, and at what', () => {
    const hand = at(new Hand(), 'proof.counter');
    hand.press('a', 'ended');
    expect(pageOf(hand).end).toEqual({ how: 'early', stage: 'proof.counter' });
    hand.takeBack();
    expect([pageOf(hand).end, pageOf(hand).to]).toEqual([{ how: 'open' }, null]);
  });

  it('is there for a bake with no reading that was left open for a month', () => {
    const hand = new Hand();
    hand.start('a', 'proof.retard');
    hand.turnTo(hand.now + 31 * DAY);
    // The log alone knows no more than its last fact.
    expect(bakePage(hand.records, 'a')!.stages.map(({ stage }) => stage)).toEqual(['proof.retard']);
    const { end, readings, stages } = pageOf(hand);
    expect([end, readings]).toEqual([{ how: 'open' }, []]);
    expect(stages.map(({ stage, to }) => [stage, to])).toEqual([
      ['proof.retard', stages[1]!.from],
      ['proof.look', null],
    ]);
    expect(stages[1]!.byDue).toBe(true);
  });

  it('has a stage that time led into though a press left it at once', () => {
    const hand = at(new Hand(), 'bulk.between');
    hand.turnTo(hand.deadline('a')! + 5 * MINUTE);
    hand.press('a', 'folded');
    const fold = pageOf(hand).stages.find(({ stage }) => stage === 'bulk.fold')!;
    expect([fold.byDue, fold.to! - fold.from]).toEqual([true, 5 * MINUTE]);
  });

  it('stands where a jump put it, though it had left that stage, and tells of a bake it left out', () => {
    const hand = at(new Hand(), 'bulk.look');
    const { position } = hand.records.at(-1)!;
    walkTo(hand, 'a', 'shape.preshape');
    hand.turn(5);
    hand.do({ kind: 'jump', position });
    const [before, last] = pageOf(hand).stages.slice(-2);
    expect([before!.stage, before!.to]).toEqual(['shape.preshape', hand.now]);
    expect([last!.stage, last!.from, last!.to]).toEqual([hand.stage('a'), hand.now, null]);
    hand.do({ kind: 'jump', position: { ...position, bakes: {} } });
    expect([pageOf(hand).end, pageOf(hand).to]).toEqual([{ how: 'left' }, hand.now]);
  });

  it('is told apart from an earlier bake of the same name', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh', ['a1']);
    hand.press('a', 'ended');
    hand.turn(10);
    hand.start('a', 'shape.divide', ['a1', 'a2']);
    const { from, begun, end } = pageOf(hand);
    expect([from, begun, end]).toEqual([hand.now, 2, { how: 'open' }]);
  });
});

describe('when a stage was to begin', () => {
  it('is what the bench foretold at the wait before it, though it came otherwise', () => {
    const hand = at(new Hand(), 'mix.rest');
    const end = hand.deadline('a')!;
    hand.press('a', 'rested');
    const salt = pageOf(hand).stages.at(-1)!;
    expect([salt.stage, salt.planned, salt.plannedBy]).toEqual(['mix.salt', end, 'bench']);
    expect(salt.from).toBeLessThan(end);
  });

  it('is the touch of its plan, as the plan stood when it was begun', () => {
    const records = goldenPlanned();
    const plan = records.find(({ fact }) => fact.kind === 'plan')!.fact;
    if (plan.kind !== 'plan') throw new Error('The golden day has no plan.');
    const { stages, end } = bakePage(records, 'cherry')!;
    const touch = (name: string) => plan.plan.touches.find((one) => one.name === name)!.at;
    const of = (stage: string) => stages.find((one) => one.stage === stage)!;
    expect(end).toEqual({ how: 'handedOver' });
    expect([of('mix.first').planned, of('mix.first').plannedBy]).toEqual([touch('mix'), 'plan']);
    expect(of('proof.toFridge').planned).toBe(touch('to fridge'));
    expect(of('cool.cooling').planned).toBe(touch('unload 2'));
    expect(of('bulk.fold').plannedBy).toBe('bench');
  });
});

describe('the readings of a bake', () => {
  it('come in their order, with what they said before they were corrected', () => {
    const hand = at(new Hand(), 'mix.temperature');
    hand.dough('a', 52);
    const target = hand.records.at(-1)!.fact.id;
    hand.turn(1);
    const reading = { what: 'doughTemperature', celsius: 25 } as const;
    hand.do({ kind: 'correct', target, reading });
    const { now } = hand;
    hand.turn(5);
    hand.measure('a', { what: 'rise', percent: 250, of: 'dough', odd: true });
    hand.measure('a', { what: 'rise', percent: 20, of: 'dough' });
    hand.takeBack();
    expect(pageOf(hand).readings.map((one) => [one.reading, one.odd, one.was])).toEqual([
      [reading, false, [{ reading: { what: 'doughTemperature', celsius: 52 }, until: now }]],
      [{ what: 'rise', percent: 250, of: 'dough', odd: true }, true, []],
    ]);
    walkToEnd(walkTo(hand, 'a', 'shape.divide'));
    expect(pageOf(hand).readings).toHaveLength(2);
  });
});
