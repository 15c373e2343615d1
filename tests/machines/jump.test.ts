import { describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { kitchenAt } from '../../machines/kitchen/position.ts';
import type { BakePlace, Position } from '../../src/core/records/position.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

/** A place that someone named: they know the stage, not its instants. */
const named = (place: BakePlace, stage: string, now: number): BakePlace => ({
  ...place,
  stage,
  marks: {},
  answers: {},
  byDue: false,
  entered: { ...place.entered, [stage]: now },
});

const saidAt = (hand: Hand, stage: string): Position => {
  const last = hand.fold.positionOf(hand.kitchen);
  return { ...last, bakes: { a: named(last.bakes['a']!, stage, hand.now) } };
};

describe('a jump', () => {
  it('stands where it says, and no take-back crosses it', () => {
    const hand = at(new Hand(), 'bulk.fold');
    const there = hand.fold.positionOf(hand.kitchen);
    hand.press('a', 'folded');
    expect(hand.do({ kind: 'jump', position: there })).toBe(true);
    expect(hand.stage('a')).toBe('bulk.fold');
    expect(hand.takeBack()).toBe(false);
    expect(hand.press('a', 'folded')).toBe(true);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('bulk.fold');
    expect(hand.takeBack()).toBe(false);
  });

  it('refuses a take-back that names a press from before it', () => {
    const hand = at(new Hand(), 'bulk.fold');
    const before = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'jump', position: hand.fold.positionOf(hand.kitchen) });
    expect(hand.do({ kind: 'takeBack', target: before })).toBe(false);
  });

  it('into a wait whose instants nobody knows gets them, and keeps them through a take-back', () => {
    const hand = at(new Hand(), 'bulk.fold');
    expect(hand.do({ kind: 'jump', position: saidAt(hand, 'bulk.proving') })).toBe(true);
    const look = hand.now + 180 * MINUTE;
    expect(hand.deadline('a')).toBe(look);
    hand.turn(10);
    hand.press('a', 'doughSeen');
    hand.turn(10);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('bulk.proving');
    expect(hand.deadline('a')).toBe(look);
    const again = hand.replayed();
    expect(again.trouble).toBeNull();
    expect(hand.fold.wanted(again.kitchen).alarmAt).toBe(look);
  });

  it('to an earlier position lets fall due what has fallen due since, each at its own instant', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const there = hand.fold.positionOf(hand.kitchen);
    const look = hand.deadline('a')!;
    hand.press('a', 'doughSeen');
    hand.press('a', 'bulkReady');
    hand.turnTo(look + 7 * MINUTE);
    hand.do({ kind: 'jump', position: there });
    expect(hand.stage('a')).toBe('bulk.look');
    expect(hand.kitchen.bakes['a']!.context.entered['bulk.look']).toBe(look);
    expect(hand.ringing).toBe('a:bulk.look');
  });

  it('finds the links between the machines again', () => {
    const hand = at(new Hand(), 'proof.look');
    expect(hand.do({ kind: 'jump', position: saidAt(hand, 'oven.queued') })).toBe(true);
    expect(hand.stage('oven')).toBe('turnOn');
    expect(hand.kitchen.oven.context.waiting).toEqual(['a1', 'a2']);
  });

  it('may go to a position whose bake was taken back since, live and after a reload alike', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.fold');
    const there = hand.fold.positionOf(hand.kitchen);
    hand.takeBack();
    const starts = Object.keys(hand.kitchen.starts);
    expect(hand.do({ kind: 'jump', position: there })).toBe(true);
    expect(hand.stage('a')).toBe('bulk.fold');
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(Object.keys(kitchen.starts)).toEqual(starts);
  });

  it('replays from the log alone, and what comes after it too', () => {
    const hand = at(new Hand(), 'bulk.fold');
    hand.do({ kind: 'jump', position: saidAt(hand, 'shape.benchRest') });
    hand.turn(25);
    hand.press('a', 'shaped');
    hand.takeBack();
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(hand.fold.positionOf(kitchen)).toEqual(hand.records.at(-1)!.position);
    expect(kitchen.seq).toBe(hand.records.length);
  });
});

describe('a position with a stage that these machines do not know', () => {
  it.each([
    ['bake', 'bulk.nowhere'],
    ['bake', 'nowhere'],
    ['oven', 'nowhere'],
  ])('of the %s (%s) cannot be stood at', (who, stage) => {
    const hand = at(new Hand(), 'bulk.fold');
    const here = hand.fold.positionOf(hand.kitchen);
    const there: Position =
      who === 'oven'
        ? { ...here, oven: { ...here.oven, stage } }
        : { ...here, bakes: { a: { ...here.bakes['a']!, stage } } };
    expect(() => kitchenAt(there, hand.kitchen.starts, MACHINES)).toThrow(
      stage.replace(/.*\./, ''),
    );
    hand.do({ kind: 'jump', position: here });
    const jump = hand.records.at(-1)!;
    const log = [
      ...hand.records.slice(0, -1),
      { ...jump, fact: { ...jump.fact, position: there } as typeof jump.fact },
    ];
    expect(hand.replayed(log).trouble?.seq).toBe(jump.seq);
  });

  it('cannot be stood at without the start that pins its recipe', () => {
    const hand = at(new Hand(), 'bulk.fold');
    expect(() => kitchenAt(hand.fold.positionOf(hand.kitchen), {}, MACHINES)).toThrow(
      'The start f1 of bake a is missing.',
    );
  });
});
