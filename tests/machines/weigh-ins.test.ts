import { describe, expect, it } from 'vitest';
import { weighInsOf } from '../../machines/kitchen/weigh-ins.ts';
import { Hand } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';
import { TIN } from './support/recipe.ts';

const weigh = (hand: Hand, grams: number, id = 'a', odd = false): boolean =>
  hand.measure(id, { what: 'weight', grams, of: 'loaf', ...(odd ? { odd: true } : {}) });
const weighed = (hand: Hand) =>
  hand.records.at(-1)!.fact.results?.find((one) => one.weighed)?.weighed;
const toHandOver = (hand: Hand, id = 'a', recipe?: typeof TIN): Hand => {
  hand.start(id, 'oven.queued', [`${id}1`], recipe);
  return walkTo(hand, id, 'cool.handOver', id);
};

describe('a cool loaf on the scale', () => {
  it('is pinned with the dough it was', () => {
    const hand = toHandOver(new Hand());
    weigh(hand, 774);
    expect(weighed(hand)).toEqual({ dough: 900, vessel: 'pot' });
    expect(weighInsOf(hand.kitchen)).toEqual([{ dough: 900, loaf: 774, vessel: 'pot' }]);
    expect(hand.stage('a')).toBe('cool.handOver');
  });

  it('teaches nothing while it is hot, before it is baked, or as another weight', () => {
    const hand = new Hand();
    hand.start('a', 'shape.divide', ['a1']);
    hand.measure('a', { what: 'weight', grams: 905, of: 'piece' });
    weigh(hand, 800);
    walkTo(hand, 'a', 'cool.cooling');
    hand.turn(10);
    const { marks } = hand.kitchen.bakes['a']!.context;
    weigh(hand, 790);
    expect(weighInsOf(hand.kitchen)).toEqual([]);
    hand.turn(60);
    weigh(hand, 780);
    expect(weighInsOf(hand.kitchen)).toHaveLength(1);
    // The wait goes on as it was.
    expect(hand.kitchen.bakes['a']!.context.marks).toEqual(marks);
  });

  it('teaches what it was corrected to, nothing where it is odd or taken back', () => {
    const hand = toHandOver(new Hand());
    weigh(hand, 77);
    hand.takeBack();
    weigh(hand, 754);
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'weight', grams: 774, of: 'loaf' } });
    weigh(hand, 2600, 'a', true);
    expect(weighInsOf(hand.kitchen).map(({ loaf }) => loaf)).toEqual([774]);
    const again = hand.replayed();
    expect(again.trouble).toBeNull();
    expect(weighInsOf(again.kitchen)).toEqual(weighInsOf(hand.kitchen));
  });

  it('is told to the next start, and outlasts a jump', () => {
    const hand = toHandOver(new Hand());
    weigh(hand, 765);
    walkToEnd(hand);
    toHandOver(hand, 'b', TIN);
    weigh(hand, 800, 'b');
    hand.press('b', 'ended');
    hand.start('c', 'mix.weigh');
    const all = [
      { dough: 900, loaf: 765, vessel: 'pot' },
      { dough: 900, loaf: 800, vessel: 'tin' },
    ];
    expect(hand.records.at(-1)!.fact.results![0]!.weighIns).toEqual(all);
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    expect(weighInsOf(hand.kitchen)).toEqual(all);
    hand.start('d', 'mix.weigh');
    expect(hand.records.at(-1)!.fact.results![0]!.weighIns).toEqual(all);
    expect(weighInsOf(hand.replayed().kitchen)).toEqual(all);
  });
});
