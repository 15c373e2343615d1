import { describe, expect, it } from 'vitest';
import { positionOf } from '../../machines/kitchen/position.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';
import { RECIPE, SCOOP, TIN } from './support/recipe.ts';

interface Wait {
  readonly stage: string;
  readonly seen: string;
  readonly ready: string;
  readonly look: string;
  readonly next: string;
  readonly recipe: Recipe;
}

const DOUGH = { stage: 'bulk.proving', seen: 'doughSeen', ready: 'bulkReady', look: 'bulk.look' };
const WARM = { seen: 'loafSeen', ready: 'loafReady', look: 'proof.poke', next: 'oven.queued' };

/** Every wait that ends in a look where hands may say that it is ready. */
const WAITS: readonly Wait[] = [
  {
    stage: 'levain.ripening',
    seen: 'levainSeen',
    ready: 'levainRipe',
    look: 'levain.look',
    next: 'levain.ripe',
    recipe: RECIPE,
  },
  { ...DOUGH, next: 'shape.divide', recipe: RECIPE },
  { ...DOUGH, next: 'shape.scoop', recipe: SCOOP },
  { ...WARM, stage: 'proof.retard', look: 'proof.look', recipe: RECIPE },
  { ...WARM, stage: 'proof.warm', recipe: TIN },
  { ...WARM, stage: 'proof.soon', recipe: TIN },
];

/** A few minutes into the wait, long before its look. */
const waiting = ({ stage, recipe }: Wait): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'read.plan', ['a1', 'a2'], recipe);
  return walkTo(hand, 'a', stage).turn(3);
};

const bakeOf = (hand: Hand) => positionOf(hand.kitchen).bakes['a'];

describe.each(WAITS)('hands that beat the model at $stage, to $next', (wait) => {
  it('go on in one press, with the fact and to the place that the look first would lead to', () => {
    const [one, two] = [waiting(wait), waiting(wait)];
    expect(one.press('a', wait.ready)).toBe(true);
    expect(two.press('a', wait.seen)).toBe(true);
    expect(two.press('a', wait.ready)).toBe(true);
    expect(one.stage('a')).toBe(wait.next);
    expect(bakeOf(one)).toEqual(bakeOf(two));
    expect(one.records.at(-1)!.position.oven).toEqual(two.records.at(-1)!.position.oven);
    const written = ({ records }: Hand): object => ({ ...records.at(-1)!.fact, id: '' });
    expect(written(one)).toEqual(written(two));
    expect(one.records).toHaveLength(two.records.length - 1);
  });

  it('are remembered as early, and no look calls any more', () => {
    const hand = waiting(wait);
    const look = hand.deadline('a')!;
    hand.press('a', wait.ready);
    const entered = bakeOf(hand)!.entered;
    expect(entered[wait.look as keyof typeof entered]).toBe(hand.now);
    expect(hand.now).toBeLessThan(look);
    expect(hand.replayed().trouble).toBeNull();
    const calls = hand.kitchen.attention.context.calls;
    expect(calls.filter(({ stage }) => stage === wait.look)).toEqual([]);
    expect(hand.says.at(-1)?.stage).not.toBe(wait.look);
  });

  it('are taken back in one press: the wait goes on and ends when it would have', () => {
    const [hand, other] = [waiting(wait), waiting(wait)];
    hand.press('a', wait.ready);
    hand.turn(2);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe(wait.stage);
    expect(hand.deadline('a')).toBe(other.deadline('a'));
    expect(hand.deadline('a')! - hand.now).toBeGreaterThan(5 * MINUTE);
    expect(bakeOf(hand)).toEqual(bakeOf(other.turn(2)));
    hand.turnTo(hand.deadline('a')!);
    other.turnTo(other.deadline('a')!);
    expect(hand.stage('a')).toBe(other.stage('a'));
    expect(hand.replayed().trouble).toBeNull();
  });

  it('press once, however often they press', () => {
    const hand = waiting(wait);
    expect(hand.press('a', wait.ready)).toBe(true);
    expect(hand.press('a', wait.ready)).toBe(false);
  });
});

it.each(['lidded', 'open', 'standing', 'preheating'])(
  'a hot oven that waits at %s is never gone past in one press',
  (stage) => {
    const hand = new Hand();
    hand.start('a', 'proof.toFridge');
    walkTo(hand, 'a', 'oven.queued');
    const arrive = stage === 'standing' ? 'poke' : stage;
    walkTo(hand, 'oven', arrive);
    if (stage === 'standing') hand.press('oven', 'pokeNotYet');
    expect(hand.stage('oven')).toBe(stage);
    for (const act of ['crustReady', 'pokeReady', 'loafReady', 'bulkReady'])
      expect(hand.press('oven', act)).toBe(false);
    expect(hand.stage('oven')).toBe(stage);
  },
);
