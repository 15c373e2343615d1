import { expect, test } from 'vitest';
import { bakeWords } from '../../../src/core/speech/words/bake-words.ts';
import { said, shown } from '../../../src/core/speech/facts.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { sayHeats, showHeats } from '../../../src/core/speech/heats.ts';
import { sayLength, showLength } from '../../../src/core/speech/lengths.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const OTHER = { heat: 'F', weight: 'oz' } as const;

test('one set of facts fills the screen with digits and the air with words', () => {
  const facts = { grams: 900, loaves: 4 };
  const { headline, spoken } = bakeWords['shape.divide'];
  expect(fill(headline, shown(facts, METRIC))).toBe('Divide into 900 g pieces');
  expect(fill(spoken, said(facts, METRIC))).toMatch(/^four loaves, nine hundred grams each\./);
});

test('each fact is written in its own way', () => {
  const facts = {
    grams: 9.5,
    keepBack: 30,
    celsius: 25.04,
    crumbHeat: 88,
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
  expect(shown(facts, METRIC)).toEqual({
    ...showHeats(METRIC),
    grams: '9.5 g',
    keepBack: '30 g',
    celsius: '25 °C',
    crumbHeat: '88 °C',
    minutes: '1\u00a0h\u00a012',
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
  expect(said(facts, METRIC)).toEqual({
    ...sayHeats(METRIC),
    grams: 'nine point five grams',
    keepBack: 'thirty, three zero, grams',
    celsius: 'twenty-five degrees',
    crumbHeat: 'eighty-eight degrees',
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

test('the same facts in the other units', () => {
  const facts = { grams: 935.53, keepBack: 30, celsius: 25.04, minutes: 72, time: '1:40\u00a0pm' };
  expect(shown(facts, OTHER)).toMatchObject({
    grams: '2\u00a0lb\u00a01\u00a0oz',
    keepBack: '1.06 oz',
    celsius: '77 °F',
    minutes: '1\u00a0h\u00a012',
    time: '1:40\u00a0pm',
    potHeat: '500 °F',
    fridgeHeat: '41 °F',
    parchmentHeat: '420 to 445 °F',
  });
  expect(said(facts, OTHER)).toMatchObject({
    grams: 'two pounds one ounce',
    keepBack: 'one point zero six ounces',
    celsius: 'seventy-seven degrees Fahrenheit',
    minutes: 'one hour twelve minutes',
    time: 'one forty pm',
    potHeat: 'five hundred degrees Fahrenheit',
  });
});

test('facts that no unit changes need none, and then the heats of the trade are not there', () => {
  expect(shown({ loaves: 2 })).toEqual({ loaves: '2 loaves' });
  expect(() => fill('{bagHeat}', shown({ loaves: 2 }))).toThrow('wants {bagHeat}');
});

test('lengths carry their unit, which changes with the size', () => {
  const pairs: [number, string, string][] = [
    [0, '0\u00a0min', 'zero minutes'],
    [1, '1\u00a0min', 'one minute'],
    [20, '20\u00a0min', 'twenty minutes'],
    [59.6, '1\u00a0h', 'one hour'],
    [65, '1\u00a0h\u00a005', 'one hour five minutes'],
    [75, '1\u00a0h\u00a015', 'one hour fifteen, one five, minutes'],
    [840, '14\u00a0h', 'fourteen, one four, hours'],
    [5999, '99\u00a0h\u00a059', 'ninety-nine hours fifty-nine minutes'],
    [6000, '4\u00a0days', 'four days'],
    [43_200, '30\u00a0days', 'thirty, three zero, days'],
    [525_600, '365\u00a0days', 'three hundred and sixty-five days'],
  ];
  for (const [minutes, digits, words] of pairs) {
    expect(showLength(minutes)).toBe(digits);
    expect(sayLength(minutes)).toBe(words);
  }
  for (const bad of [-1, Infinity, Number.NaN])
    expect(() => sayLength(bad)).toThrow(`A length must be 0 minutes or more, not ${bad}.`);
});
