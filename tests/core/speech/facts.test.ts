import { expect, test } from 'vitest';
import { bakeWords } from '../../../src/core/speech/en/bake-words.ts';
import { said, shown } from '../../../src/core/speech/facts.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { sayLength, showLength } from '../../../src/core/speech/lengths.ts';

test('one set of facts fills the screen with digits and the air with words', () => {
  const facts = { grams: 900, loaves: 4 };
  const { headline, spoken } = bakeWords['shape.divide'];
  expect(fill(headline, shown(facts))).toBe('Divide into 4 loaves, 900 g each');
  expect(fill(spoken, said(facts))).toMatch(/^four loaves, nine hundred grams each\./);
});

test('each fact is written in its own way', () => {
  const facts = {
    grams: 9.5,
    keepBack: 30,
    celsius: 25.04,
    minutes: 72,
    time: '13:40',
    until: '06:05',
    loaves: 1,
    load: 2,
    loads: 3,
    touch: 1,
    touches: 2,
    loaf: 'lane wheat',
    pot: 'left pot',
    name: 'salt',
  };
  expect(shown(facts)).toEqual({
    grams: '9.5',
    keepBack: '30',
    celsius: '25',
    minutes: '1 h 12',
    time: '13:40',
    until: '06:05',
    loaves: '1 loaf',
    load: '2',
    loads: '3',
    touch: '1',
    touches: '2',
    loaf: 'lane wheat',
    pot: 'left pot',
    name: 'salt',
  });
  expect(said(facts)).toEqual({
    grams: 'nine point five grams',
    keepBack: 'thirty, three zero, grams',
    celsius: 'twenty-five degrees',
    minutes: 'one hour twelve minutes',
    time: 'thirteen forty',
    until: 'six oh five',
    loaves: 'one loaf',
    load: 'two',
    loads: 'three',
    touch: 'one',
    touches: 'two',
    loaf: 'lane wheat',
    pot: 'left pot',
    name: 'salt',
  });
});

test('lengths carry their unit, which changes with the size', () => {
  const pairs: [number, string, string][] = [
    [0, '0 min', 'zero minutes'],
    [1, '1 min', 'one minute'],
    [20, '20 min', 'twenty minutes'],
    [59.6, '1 h', 'one hour'],
    [65, '1 h 05', 'one hour five minutes'],
    [75, '1 h 15', 'one hour fifteen, one five, minutes'],
    [840, '14 h', 'fourteen, one four, hours'],
  ];
  for (const [minutes, digits, words] of pairs) {
    expect(showLength(minutes)).toBe(digits);
    expect(sayLength(minutes)).toBe(words);
  }
  for (const bad of [-1, 6000, Number.NaN])
    expect(() => sayLength(bad)).toThrow(`A length must be from 0 to 5999 minutes, not ${bad}.`);
});
