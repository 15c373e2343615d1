import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { ANY_POT, EQUIPMENT, type Equipment } from '../../src/core/kitchen/equipment.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { doubtOf, readingFrom } from '../../src/screens/bench/readings/judge-number.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';

const CELSIUS = { heat: 'C', weight: 'g' } as const;
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const pots = (...litres: number[]): Equipment => ({
  ...EQUIPMENT,
  pots: litres.map((one) => ({ ...ANY_POT, material: 'bareIron', litres: one })),
});
const see = (hand: Hand, equipment: Equipment) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, CELSIUS, equipment);

describe('what cannot be is told in words', () => {
  it('a core that was read in the other unit is asked again, and never taken', () => {
    const number = { slot: 'coreTemperature', typed: 205 } as const;
    expect(doubtOf(number, CELSIUS)).toContain('°F');
    for (const asked of [false, true]) expect(readingFrom(number, asked, CELSIUS)).toBeNull();
    expect(readingFrom(number, false, { ...CELSIUS, heat: 'F' })).toMatchObject({
      what: 'coreTemperature',
    });
  });

  it('a loaf too big for the very pot it goes into is told at the load, and no other', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1', 'a2']);
    hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
    walkTo(hand, 'oven', 'load');
    const small = /^This pot is too small for the loaf\. Use another\./;
    expect(see(hand, pots(2, 4)).care).toMatch(small);
    expect(see(hand, pots(4, 2)).care).not.toMatch(small);
    expect(see(hand, EQUIPMENT).care).not.toMatch(small);
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' });
    walkTo(hand, 'oven', 'load');
    expect(see(hand, pots(4, 2)).care).toMatch(small);
  });
});

describe('a loaf of the fridge stays there until the pot is nearly hot', () => {
  it('is fetched ten minutes before, by its number, and not ahead', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1', 'a2', 'a3']);
    hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
    const hot = hand.deadline('oven')!;
    const tasks = () => see(hand, EQUIPMENT);
    hand.turnTo(hot - 10 * 60_000 - 1);
    hand.press('oven', 'taskDone', { item: 'parchment' });
    expect(tasks()).toMatchObject({ task: null, ahead: 0 });
    hand.turnTo(hot - 10 * 60_000);
    expect(tasks()).toMatchObject({
      task: 'fetch',
      headline: 'Take loaf 1 out of the fridge',
      call: 'look',
    });
    expect(hand.press('oven', 'taskDone', { item: 'fetch' })).toBe(true);
    expect(tasks().task).toBeNull();
  });

  it('each anew as a pot heats up again, and none that stood out', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'oven.queued', ['a1', 'a2']);
    hand.press('oven', 'ovenOn', { lanes: ['lane.left'] });
    hand.turnTo(hand.deadline('oven')! - 1000);
    hand.press('oven', 'taskDone', { item: 'fetch' });
    walkTo(hand, 'oven', 'recover');
    expect(hand.kitchen.lanes['lane.left']!.context.marks).toHaveProperty(['lead.fetch']);
    const out = new Hand({ wait: waitFor });
    out.start('a', 'proof.look', ['a1']);
    out.press('a', 'standOut');
    walkTo(out, 'oven', 'preheating');
    expect(out.kitchen.oven.context.marks).not.toHaveProperty(['lead.fetch']);
  });
});
