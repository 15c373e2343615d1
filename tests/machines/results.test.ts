import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

describe('results', () => {
  it('that name another stage, or another wait at this one, are ignored', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const look = hand.deadline('a')!;
    const { entered } = hand.kitchen.bakes['a']!.context;
    const since = entered['bulk.proving']!;
    const wrong = { since, marks: { look: look + 1, end: 5 }, model: 'wrong' };
    const fact = {
      kind: 'reading',
      by: 'probe',
      bake: 'a',
      reading: { what: 'doughTemperature', celsius: 24 },
      id: 'x',
      device: 'test',
      at: hand.now,
      raw: hand.now,
      results: [
        { who: 'a', stage: 'mix.rest', ...wrong },
        { who: 'b', stage: 'bulk.proving', ...wrong },
        { who: 'a', stage: 'bulk.proving', ...wrong, since: since - 1 },
        { who: 'oven', stage: 'lidded', ...wrong },
      ],
    } as const;
    const { kitchen, taken } = hand.fold.apply(hand.kitchen, hand.machines, fact);
    expect(taken).toBe(true);
    expect(hand.fold.deadlineOf(kitchen.bakes['a']!)).toBe(look);
    expect(kitchen.oven.context.marks).toEqual({});
  });

  it.each([
    ['no mark at all', {}],
    ['the mark of another wait', { end: 9 }],
    ['a mark that is no instant', { look: Number.NaN }],
    ['a mark beyond all time', { look: Infinity }],
  ])('with %s are an impossible answer: a wait must not lose its end', (_, marks) => {
    const hand = new Hand({ wait: () => ({ marks, model: 'broken' }) });
    expect(() => hand.start('a', 'bulk.proving')).toThrow('The model gives bulk.proving no look.');
    expect(hand.records).toEqual([]);
  });
});
