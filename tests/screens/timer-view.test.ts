import { describe, expect, it } from 'vitest';
import { TIMER_CALLS, TIMER_NAMES, type TimerName } from '../../src/core/records/timer-names.ts';
import { timerWords } from '../../src/core/speech/words/timers.ts';
import { MINUTE } from '../../src/core/units.ts';
import { aboutOf, calledOf, timerOver, timerSaid, timersOf } from '../../src/screens/timer-view.ts';
import { wordsOf } from '../core/speech/support/catalogue.ts';
import { Hand } from '../machines/support/hand.ts';
import { at } from '../machines/support/onward.ts';

const set = (hand: Hand, timer: string, name: TimerName, minutes: number): boolean =>
  hand.do({
    kind: 'timer',
    timer,
    name,
    until: hand.now + minutes * MINUTE,
    call: TIMER_CALLS[name],
  });
const over = (hand: Hand) =>
  timerOver(hand.kitchen, hand.fold.wanted(hand.kitchen).ringing)?.id ?? null;

describe('timers on the screen', () => {
  it('stand in the order they end, each with its words', () => {
    const hand = new Hand();
    set(hand, 'k', 'kettle', 10);
    set(hand, 'n', 'nuts', 5);
    expect(timersOf(hand.kitchen).map(({ words, over }) => [words.short, over])).toEqual([
      ['Nuts', false],
      ['Kettle', false],
    ]);
    hand.turn(5);
    expect(timersOf(hand.kitchen).map(({ over }) => over)).toEqual([true, false]);
  });

  it('take the screen once they are over, hot ones first, until each is stopped', () => {
    const hand = new Hand();
    set(hand, 'k', 'kettle', 3);
    set(hand, 'n', 'nuts', 5);
    expect(over(hand)).toBeNull();
    hand.turn(3);
    expect(over(hand)).toBe('k');
    hand.turn(2);
    expect(over(hand)).toBe('n');
    hand.heard('timer');
    hand.do({ kind: 'timerOff', timer: 'n' });
    expect(over(hand)).toBe('k');
    hand.do({ kind: 'timerOff', timer: 'k' });
    expect(over(hand)).toBeNull();
    hand.takeBack();
    expect(over(hand)).toBe('k');
  });

  it('leave the screen to a hot lid, hushed or not, and come back after it', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    const lid = hand.deadline('oven')!;
    set(hand, 'n', 'nuts', (lid - hand.now) / MINUTE);
    hand.turnTo(lid);
    expect(hand.kitchen.attention.context.calls.map(({ kind }) => kind)).toEqual(['hot', 'hot']);
    expect(over(hand)).toBeNull();
    hand.heard('oven');
    hand.heard('timer');
    expect(over(hand)).toBeNull();
    hand.press('oven', 'lidOff');
    expect(over(hand)).toBe('n');
  });

  it('are said with their caution, and named wherever a call is named', () => {
    const hand = new Hand();
    set(hand, 'n', 'nuts', 5);
    hand.turn(5);
    expect(timerSaid(hand.kitchen, 'n')).toBe(`Nuts in the oven: time. ${timerWords.nuts.care}`);
    expect(timerSaid(hand.kitchen, 'gone')).toBeNull();
    const [call] = hand.kitchen.attention.context.calls;
    expect(aboutOf(hand.kitchen, call!)).toBe('nuts in the oven');
    expect(calledOf(hand.kitchen, call!)).toBe('Nuts in the oven');
    expect(calledOf(hand.kitchen, { who: 'a', stage: 'bulk.fold' })).toBe('Fold');
  });

  it('of a name that is not known are something else', () => {
    const hand = new Hand();
    hand.do({ kind: 'timer', timer: 'x', name: 'tea', until: hand.now + MINUTE, call: 'act' });
    expect(timersOf(hand.kitchen)[0]!.words).toBe(timerWords.other);
  });
});

it.each(TIMER_NAMES)('%s: a short name, and a caution wherever it burns', (name) => {
  const { name: long, short, care } = timerWords[name];
  expect(wordsOf(`${long}: time`).length).toBeLessThanOrEqual(7);
  expect(short.length).toBeLessThanOrEqual(6);
  if (TIMER_CALLS[name] === 'hot') expect(care).toMatch(/hot.*children/i);
});
