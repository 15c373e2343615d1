import { expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { standView } from '../../src/screens/bench/stand-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { at, walkTo } from '../machines/support/onward.ts';

const hour = (instant: number): string => new Date(instant).toISOString().slice(11, 16);
const view = (hand: Hand) => {
  const focus = focusOn(hand.kitchen, 'a')!;
  const plain = benchView(hand.kitchen, focus, hour, questionView, { heat: 'C', weight: 'g' });
  return standView(plain, hand.kitchen, hand.now);
};
const looked = (signs: Readonly<Record<string, string>>): Hand => {
  const hand = at(new Hand({ wait: waitFor }), 'proof.look', 'shape.divide');
  hand.answer('a', { wobble: 'notSure', skin: 'smooth', ...signs });
  return hand;
};

/** The minutes that a verdict has loaves left out for. */
const toldBy = (detail: string): number => {
  const [, hours = '0', minutes = '0'] =
    /[Ll]eave (?:them|it) out (?:(\d+)\sh)?\s?(?:(\d+)(?:\smin)?)?, then look/.exec(detail) ?? [];
  return Number(hours) * 60 + Number(minutes);
};

it('tells a tight cold loaf for how long it stands out, and the press holds it to that', () => {
  const hand = looked({ grown: 'none', rim: 'below', dent: 'springs' });
  const { detail, spoken, slab } = view(hand);
  const told = toldBy(detail);
  expect(told).toBeGreaterThanOrEqual(30);
  expect(detail).toContain(`Leave them out ${slab.then}.`);
  expect(spoken).toMatch(/Leave them out [a-z -]+ (minutes|hours?), then look/);
  expect(hand.records.at(-1)!.fact).not.toHaveProperty('results');
  hand.press('a', 'standOut');
  const stands = (hand.kitchen.bakes['a']!.context.marks['look']! - hand.now) / MINUTE;
  expect(Math.abs(stands - told)).toBeLessThanOrEqual(2.5);
});

it('tells those that spring back once more how much longer', () => {
  const hand = looked({ grown: 'none', rim: 'below', dent: 'springs' });
  hand.press('a', 'standOut');
  hand.turnTo(hand.deadline('a')!);
  hand.answer('a', { dent: 'springs', grown: 'little' });
  const told = toldBy(view(hand).detail);
  expect(told).toBeGreaterThanOrEqual(20);
  hand.press('a', 'loafNotYet');
  expect(Math.abs((hand.deadline('a')! - hand.now) / MINUTE - told)).toBeLessThanOrEqual(2.5);
});

it('tells it at the oven too', () => {
  const hand = walkTo(looked({ grown: 'grown', rim: 'level', dent: 'slowly' }), 'a', 'oven.queued');
  walkTo(hand, 'oven', 'poke');
  hand.answer('oven', { grown: 'little', dent: 'springs' });
  const told = toldBy(view(hand).detail);
  hand.press('oven', 'pokeNotYet');
  expect(hand.stage('oven')).toBe('standing');
  expect((hand.deadline('oven')! - hand.now) / MINUTE).toBe(told);
});

it('tells no minutes where loaves are not told to stand out', () => {
  for (const signs of [
    { grown: 'grown', rim: 'level', dent: 'slowly' },
    { grown: 'little', rim: 'below', dent: 'slowly' },
    { grown: 'grown', rim: 'above', dent: 'stays' },
  ])
    expect(view(looked(signs)).detail).not.toMatch(/[Ll]eave (them|it) out/);
});
