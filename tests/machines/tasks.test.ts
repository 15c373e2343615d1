import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { Hand, plainWait } from './support/hand.ts';

/** The plain waits, with two tasks in the rest: one due at its start, one ten minutes before its end. */
const withTasks = () =>
  new Hand({
    wait: (input) => {
      const wait = plainWait(input);
      if (input.stage !== 'mix.rest' && input.stage !== 'preheating') return wait;
      const end = Object.values(wait.marks)[0]!;
      return {
        ...wait,
        marks: { ...wait.marks, 'lead.bench': input.now, 'lead.nuts': end - 10 * MINUTE },
      };
    },
  });

const rest = () => {
  const hand = withTasks();
  hand.start('a', 'mix.first');
  hand.press('a', 'mixed');
  return hand;
};
const open = (hand: Hand) => openTasks(hand.kitchen.bakes['a']!).map(({ task }) => task);

describe('the tasks of a wait', () => {
  it('due at the press that began it are open and do not ring; a later one calls once', () => {
    const hand = rest();
    expect(open(hand)).toEqual(['bench', 'nuts']);
    expect(hand.ringing).toBeNull();
    hand.turn(20);
    expect(hand.ringing).toBe('a:lead.nuts');
    expect(hand.callId('a')).toBe(`a:lead.nuts:${hand.now}`);
    expect(hand.says.at(-1)).toEqual({ who: 'a', stage: 'lead.nuts' });
    hand.heard('a');
    hand.turn(5);
    expect([hand.ringing, hand.stage('a')]).toEqual([null, 'mix.rest']);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('leave the wait its end', () => {
    const hand = rest();
    const end = hand.deadline('a')!;
    hand.turn(20);
    expect(hand.deadline('a')).toBe(end);
    hand.turn(10);
    expect(hand.stage('a')).toBe('mix.salt');
  });

  it('are done by a press, early too, and taken back', () => {
    const hand = rest();
    expect(hand.press('a', 'taskDone', { item: 'nuts' })).toBe(true);
    expect(hand.press('a', 'taskDone', { item: 'nuts' })).toBe(false);
    hand.turn(20);
    expect(hand.ringing).toBeNull();
    expect(hand.takeBack()).toBe(true);
    expect(hand.ringing).toBe('a:lead.nuts');
    expect(hand.press('a', 'taskDone', { item: 'nuts' })).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.replayed().trouble).toBeNull();
  });

  it('are closed by going on; what is done stays known', () => {
    const hand = rest();
    hand.press('a', 'taskDone', { item: 'bench' });
    hand.turn(20);
    hand.press('a', 'rested');
    expect(hand.fold.callsOf(hand.kitchen)).toEqual([]);
    expect(open(hand)).toEqual([]);
    expect(Object.keys(hand.records.at(-1)!.position.bakes['a']!.tasks)).toEqual(['bench']);
  });

  it('are refused where no wait carries them', () => {
    const hand = rest();
    expect(hand.press('a', 'taskDone', { item: 'tea' })).toBe(false);
    expect(hand.press('a', 'taskDone')).toBe(false);
    expect(hand.press('a', 'lead', { item: 'nuts' })).toBe(false);
    hand.press('a', 'rested');
    expect(hand.press('a', 'taskDone', { item: 'nuts' })).toBe(false);
  });

  it('of the oven are its own', () => {
    const hand = withTasks();
    hand.start('a', 'oven.queued');
    hand.press('oven', 'ovenOn');
    hand.turn(35);
    expect(hand.ringing).toBe('oven:lead.nuts');
    expect(hand.press('oven', 'taskDone', { item: 'nuts' })).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.replayed().trouble).toBeNull();
  });
});
