import { describe, expect, it } from 'vitest';
import { speakOf } from '../../../src/app/speak-of.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { withLastTime } from '../../../src/screens/bench/last-time.ts';
import { questionView } from '../../../src/screens/bench/question-view.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { wordsOf } from '../../core/speech/support/catalogue.ts';

const UNITS = { heat: 'C', weight: 'g' } as const;
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);

/** A kitchen in which this bread was baked once and noted so, and the next one of it begun. */
const next = (text: string | null, from = 'read.plan'): Hand => {
  const hand = new Hand({ now: Date.UTC(2031, 4, 3, 6) });
  hand.start('z', 'cool.note');
  hand.press('z', 'noted', text === null ? {} : { text });
  hand.turn(600);
  hand.start('a', from);
  return hand;
};
const see = (hand: Hand): BenchView => {
  const focus = focusOn(hand.kitchen, 'a')!;
  const view = benchView(hand.kitchen, focus, hour, questionView, UNITS);
  return withLastTime(view, hand.kitchen, focus, hand.records);
};
const plain = (hand: Hand): BenchView =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, UNITS);
/** What was said of the last stage that spoke for itself. */
const heard = (hand: Hand): string => {
  const say = hand.says.at(-1)!;
  return speakOf(say, hand.kitchen, hour, UNITS, EQUIPMENT, false, hand.records) ?? '';
};

describe('what the last bake left, on the bench', () => {
  it('is said with the read-through, as it is entered and again, and with nothing behind it', () => {
    const hand = next('under');
    const words = /^Last time it was under\. This time wait for the dome\. Read it through\./;
    expect(see(hand).spoken).toMatch(words);
    expect(heard(hand)).toMatch(words);
    hand.press('a', 'readThrough');
    expect(see(hand)).toEqual(plain(hand));
  });

  it('is said with the first line of a list alone, where a bake is joined at one', () => {
    const hand = next('under', 'mix.weigh');
    expect(see(hand).spoken).toMatch(/^Last time it was under\. .*flour/);
    hand.answer('a', { 'flour:wheat': '790' });
    expect(see(hand)).toEqual(plain(hand));
  });

  it('is said with the oven, where the loaves are ready to bake', () => {
    const hand = next('dark', 'oven.queued');
    expect(hand.stage('oven')).toBe('turnOn');
    expect(see(hand).spoken).toMatch(/^Last time the crust was too dark\. .* lower\. \w/);
    hand.press('oven', 'ovenOn');
    expect(see(hand)).toEqual(plain(hand));
  });

  it('is left out where nobody can heed it any more, was noted, or can be said', () => {
    for (const hand of [next('under', 'shape.divide'), next(null), next('Less water')])
      expect(see(hand)).toEqual(plain(hand));
  });
});

describe('what was noted of the bulk, once more', () => {
  it('stands and is said in the wait for its first look, in place of what is usual', () => {
    const hand = next('under');
    walkTo(hand, 'a', 'bulk.proving');
    const { detail, spoken } = see(hand);
    expect(detail).toMatch(/^Next look at \d\d:\d\d\. This time wait for the dome\.$/);
    expect(wordsOf(detail).length).toBeLessThanOrEqual(12);
    expect(spoken).toMatch(/ is the next look\. Leave the dough to rise\. This time wait/);
    expect(heard(hand)).toBe(spoken);
    walkTo(hand, 'a', 'bulk.look');
    expect(see(hand)).toEqual(plain(hand));
    hand.press('a', 'bulkNotYet');
    expect(hand.stage('a')).toBe('bulk.proving');
    expect(see(hand)).toEqual(plain(hand));
  });

  it('is said but once where the bake is joined at that wait', () => {
    const { detail, spoken } = see(next('over', 'bulk.proving'));
    expect(detail).toMatch(/This time end the bulk a little sooner\.$/);
    expect(spoken.match(/This time/g)).toHaveLength(1);
    expect(spoken).toMatch(/^Last time it was over\./);
  });

  it('is not there for what is not about the bulk', () => {
    for (const text of ['good', 'dark']) {
      const hand = next(text);
      walkTo(hand, 'a', 'bulk.proving');
      expect(see(hand)).toEqual(plain(hand));
    }
  });
});
