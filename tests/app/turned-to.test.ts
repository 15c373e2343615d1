import { describe, expect, it } from 'vitest';
import { ringingOf } from '../../machines/kitchen/ringing.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { sayAloud } from '../../src/app/say-aloud.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { Hand } from '../machines/support/hand.ts';
import { at, walkTo } from '../machines/support/onward.ts';
import { TIN } from '../machines/support/recipe.ts';

const hour = (instant: number) => new Date(instant).toISOString().slice(11, 16);

/** What the voice is handed for one press; 'done' where it is told that its act is over. */
const heardOf = (hand: Hand, who: string, act: string, more: Partial<Deed> = {}): string[] => {
  const heard: string[] = [];
  const quiet = () => null;
  const hearing = { quiet, ringing: (kitchen: Hand['kitchen']) => ringingOf(kitchen, quiet) };
  const voice = {
    say: (words: string) => void heard.push(words),
    done: () => void heard.push('done'),
  };
  const before = hand.kitchen;
  hand.says = [];
  expect(hand.press(who, act, more)).toBe(true);
  const units = { heat: 'C', weight: 'g' } as const;
  const pressed = { who, before, after: hand.kitchen };
  sayAloud(voice, hand.says, hearing, hand, hour, hand.now, units, EQUIPMENT, pressed);
  return heard;
};

/** One loaf, out of the oven; the oven is still on. */
const lastOut = (): Hand => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  hand.start('a', 'oven.queued', ['a1']);
  walkTo(hand, 'oven', 'turnOff');
  return hand;
};

describe('what is said when a press turns the bench to another act', () => {
  it('the oven is off: the cooling that began behind it', () => {
    const hand = lastOut();
    expect(hand.stage('a')).toBe('cool.cooling');
    expect(heardOf(hand, 'oven', 'ovenOff')).toEqual([
      expect.stringMatching(/is when they should be cool\. .*children stand back/),
    ]);
  });

  it('the oven is on for loaves that come soon: their wait, which goes on', () => {
    const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
    hand.start('a', 'proof.soon', ['a1'], TIN);
    expect(hand.stage('oven')).toBe('turnOn');
    expect(heardOf(hand, 'oven', 'ovenOn')).toEqual([
      expect.stringMatching(/is the next look\. The oven heats meanwhile\./),
    ]);
  });

  it('the last act of a bake: nothing, and its own words are over', () => {
    const hand = lastOut();
    hand.press('oven', 'ovenOff');
    walkTo(hand, 'a', 'cool.note');
    expect(heardOf(hand, 'a', 'noted')).toEqual(['done']);
  });

  it('a task done in a wait turns nothing: what is said of the wait is not cut short', () => {
    const hand = at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');
    const item = openTasks(hand.kitchen.bakes['a']!)[0]!.task;
    expect(heardOf(hand, 'a', 'taskDone', { item } as Partial<Deed>)).toEqual([]);
  });
});
