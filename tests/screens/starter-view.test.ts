import { afterEach, describe, expect, it } from 'vitest';
import { starterWait } from '../../src/core/day/starter-wait.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { de } from '../../src/core/speech/de.ts';
import { fr } from '../../src/core/speech/fr.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';
import { DAY, HOUR } from '../../src/core/units.ts';
import { ratioOf, starterForBake } from '../../src/screens/starter-view.ts';
import { Hand } from '../machines/support/hand.ts';

const DAWN = 20_000 * DAY + 6 * HOUR;

/** What the start page says of a hand's starter now. */
const told = (hand: Hand): string | null =>
  starterForBake({
    kitchen: () => hand.kitchen,
    now: () => hand.now,
    hour: (at) => new Date(at).toISOString().slice(11, 16),
    day: () => 'Fri',
    date: () => 'today',
  });
const real = () => new Hand({ now: DAWN, wait: waitFor, starter: starterWait });

afterEach(() => speakIn('en'));

it.each([
  ['en', '2.5'],
  ['de', '2,5'],
  ['fr', '2,5'],
] as const)('a feed of two and a half parts has them in %s as %s', (tongue, parts) => {
  speakIn(tongue, { en: {}, de, fr }[tongue]);
  expect(ratioOf(2.46)).toContain(parts);
  expect(ratioOf(2)).not.toMatch(/[.,]/);
});

describe('the starter as a bake begins', () => {
  it('says nothing where nothing is known', () => {
    expect(told(real())).toBeNull();
  });

  it('is ripening, then ripe until an hour, then wants a feed', () => {
    const hand = real();
    hand.tend({ did: 'fed', flour: 1, celsius: 25 });
    expect(told(hand)).toMatch(/^Your starter is ripe between \d\d:\d\d and \d\d:\d\d\.$/);
    hand.turnTo(hand.kitchen.starter.marks['likely']!);
    expect(told(hand)).toMatch(/^Your starter is ripe: use it by \d\d:\d\d\.$/);
    hand.turnTo(hand.kitchen.starter.marks['until']!);
    expect(told(hand)).toBe('Your starter wants one feed first.');
  });

  it.each([
    [3, 'Your starter is in the fridge: the levain’s feed wakes it.'],
    [9, 'Your starter wants one feed first.'],
    [40, 'Your starter wants 3 feeds first.'],
  ])('after %i days in the fridge', (days, text) => {
    const hand = real();
    hand.tend({ did: 'put', where: 'fridge' });
    hand.turn(days * 24 * 60);
    expect(told(hand)).toBe(text);
  });
});
