import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { Hand } from './support/hand.ts';

/** Numbers of a log read as text: what is no number is written as null. */
/** An instant that is none; a task that is not done has none by right. */
const hasHole = (hand: Hand): boolean =>
  hand.records.some(({ fact, position }) =>
    JSON.stringify([fact.at, fact.results ?? [], position])
      .replaceAll(/"(done|called)":null/g, '')
      .includes('null'),
  );

describe('two bakes due at the same instant', () => {
  it('call one after the other, neither is lost, and the log replays', () => {
    const hand = new Hand();
    for (const bake of ['a', 'b']) {
      hand.start(bake, 'mix.weigh');
      const { first } = hand.kitchen.bakes[bake]!.context.recipe.lines;
      for (const { item } of first) hand.answer(bake, { [item]: 'in' });
      hand.press(bake, 'mixed');
    }
    expect(hand.deadline('a')).not.toBeNull();
    expect(hand.deadline('a')).toBe(hand.deadline('b'));
    hand.turnTo(hand.deadline('a')!);
    expect([hand.stage('a'), hand.stage('b')]).toEqual(['mix.salt', 'mix.salt']);
    expect(hand.ringing).toBe('a:mix.salt');
    expect(hand.heard('a')).toBe(true);
    expect(hand.ringing).toBe('b:mix.salt');
    expect(hand.heard('b')).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.fold.callsOf(hand.kitchen)).toHaveLength(2);
    expect(hand.replayed().trouble).toBeNull();
  });
});

describe('thirty readings in a minute', () => {
  it('are all kept, the last one counts, and the wait stays one wait with finite instants', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'bulk.proving');
    const { since, likely } = {
      since: hand.kitchen.bakes['a']!.context.entered['bulk.proving'],
      likely: hand.kitchen.bakes['a']!.context.marks['likely']!,
    };
    for (let n = 0; n < 30; n += 1) {
      expect(hand.dough('a', n % 2 === 0 ? 18 : 29)).toBe(true);
      hand.turn(2 / 60);
    }
    const { entered, marks, readings } = hand.kitchen.bakes['a']!.context;
    expect(hand.records).toHaveLength(31);
    expect(entered['bulk.proving']).toBe(since);
    expect(readings['doughTemperature']!.reading).toMatchObject({ celsius: 29 });
    expect(marks['likely']).not.toBe(likely);
    for (const at of Object.values(marks)) expect(Number.isFinite(at)).toBe(true);
    expect(hasHole(hand)).toBe(false);
    expect(hand.stage('a')).toBe('bulk.proving');
    expect(hand.replayed().trouble).toBeNull();
    for (let n = 0; n < 30; n += 1) expect(hand.takeBack()).toBe(true);
    expect(hand.kitchen.bakes['a']!.context.readings).toEqual({});
    expect(hand.replayed().trouble).toBeNull();
  });
});

describe('a wall clock set wrong', () => {
  it.each([1, 60, 24 * 60, 365 * 24 * 60])(
    'back by %d minutes: nothing is lost and no instant runs back',
    (minutes) => {
      const hand = new Hand();
      hand.start('a', 'mix.first');
      hand.press('a', 'mixed');
      const due = hand.deadline('a')!;
      hand.turn(10).wallBack(minutes);
      expect(hand.dough('a', 24)).toBe(true);
      expect(hand.deadline('a')).toBe(due);
      const times = hand.records.map(({ fact }) => fact.at);
      expect(times).toEqual(times.toSorted((a, b) => a - b));
      hand.turn((due - hand.now) / MINUTE);
      expect(hand.stage('a')).toBe('mix.salt');
      expect(hasHole(hand)).toBe(false);
      expect(hand.replayed().trouble).toBeNull();
    },
  );
});
