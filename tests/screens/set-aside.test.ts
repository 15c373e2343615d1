import { describe, expect, it } from 'vitest';
import { speakOf } from '../../src/app/speak-of.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const UNITS = { heat: 'C', weight: 'g' } as const;
const said = (hand: Hand) => {
  const say = hand.says.at(-1)!;
  return speakOf(say, hand.kitchen, hour, UNITS, EQUIPMENT);
};
const poking = (loaves: string[]): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', loaves);
  hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] });
  return walkTo(hand, 'oven', 'poke');
};

describe('a loaf that is set aside', () => {
  it('is named, and why it goes last, before the next one is looked at', () => {
    const hand = poking(['a1', 'a2', 'a3']);
    expect(said(hand)).not.toContain('slow');
    hand.press('oven', 'pokeNotYet');
    expect(said(hand)).toMatch(/^Loaf one is slow\. It goes last\. One centimetre in/);
    hand.press('oven', 'pokeNotYet');
    expect(said(hand)).toMatch(/^Loaf two is slow\. It goes last\./);
  });

  it('is not told of again at the next look, nor where it stands out alone', () => {
    const hand = poking(['a1', 'a2', 'a3']);
    hand.press('oven', 'pokeNotYet');
    walkTo(hand, 'oven', 'load');
    hand.press('oven', 'loaded', { loaves: ['a2'], lane: 'lane.left' });
    expect(hand.stage('oven')).toBe('poke');
    expect(said(hand)).not.toContain('slow');
    const alone = poking(['a1']);
    alone.press('oven', 'pokeNotYet');
    expect(alone.stage('oven')).toBe('standing');
    expect(said(alone)).not.toContain('goes last');
  });

  it('is named with its bake where more than one runs', () => {
    const hand = poking(['a1', 'a2']);
    hand.start('b', 'bulk.proving', ['b1']);
    hand.press('oven', 'pokeNotYet');
    expect(said(hand)).toMatch(/^Cherry bake.*\.\u00a0Loaf one is slow\. It goes last\./);
  });
});
