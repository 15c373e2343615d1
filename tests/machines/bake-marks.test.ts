import { describe, expect, it } from 'vitest';
import { bakeMarks } from '../../src/core/records/bake-marks.ts';
import { Hand } from './support/hand.ts';

const marks = ({ records }: Hand) => bakeMarks(records);

describe('the marks of bakes', () => {
  it('are counted up while bakes run beside one another', () => {
    const hand = new Hand();
    for (const bake of ['a', 'b', 'c']) hand.start(bake);
    expect(marks(hand)).toEqual({ a: 1, b: 2, c: 3 });
  });

  it('come free when a bake is over, and the others keep theirs', () => {
    const hand = new Hand();
    hand.start('a');
    hand.start('b');
    hand.press('a', 'ended');
    hand.start('c');
    expect(marks(hand)).toMatchObject({ b: 2, c: 1 });
    hand.start('d');
    expect(marks(hand)['d']).toBe(3);
  });

  it('are never the same for two that run, whatever is taken back', () => {
    const hand = new Hand();
    hand.start('a');
    hand.start('b');
    hand.press('a', 'ended');
    hand.start('c');
    hand.takeBack();
    hand.takeBack();
    expect(Object.keys(hand.kitchen.bakes)).toEqual(['a', 'b']);
    hand.start('d');
    const all = marks(hand);
    const running = Object.keys(hand.kitchen.bakes).map((id) => all[id]);
    expect(running).toEqual([1, 2, 3]);
  });

  it('stay over a rebuild of the log', () => {
    const hand = new Hand();
    hand.start('a');
    hand.start('b');
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    hand.start('c');
    expect(marks(hand)).toEqual({ a: 1, b: 2, c: 3 });
  });
});
