import { showLength } from '../../../src/core/speech/lengths.ts';
import { expect, test } from 'vitest';
import { aloud } from '../../../src/core/speech/aloud.ts';
import { allTexts } from './support/catalogue.ts';

test.each([
  ['Children stay 1 m back.', 'Children stay one metre back.'],
  ['Press a floured finger 1 cm in.', 'Press a floured finger one centimetre in.'],
  ['cool running water for 20 minutes', 'cool running water for twenty minutes'],
  ['It stops at 220 °C. Bake longer.', 'It stops at two hundred and twenty degrees. Bake longer.'],
  [
    'takes only 420 to 445 °F',
    'takes only four hundred and twenty to four hundred and forty-five degrees Fahrenheit',
  ],
  ['Set your phone for 07:15.', 'Set your phone for seven fifteen.'],
  ['Set your phone for 7:15\u00a0pm.', 'Set your phone for seven fifteen pm.'],
  ['Odd: −5 to 40 °C is usual.', 'Odd: minus five to forty degrees is usual.'],
  [
    '1\u00a0lb\u00a015.7\u00a0oz is much',
    'one pound fifteen point seven, one five point seven, ounces is much',
  ],
  ['does your probe show °F?', 'does your probe show Fahrenheit?'],
  ['Your oven takes 50 min.', 'Your oven takes fifty, five zero, minutes.'],
  [`Be back ${showLength(72)} sooner.`, 'Be back one hour twelve sooner.'],
  ['“Not sure” is an answer.', 'Not sure is an answer.'],
  ['Fold the dough.', 'Fold the dough.'],
])('%s', (shown, said) => {
  expect(aloud(shown)).toBe(said);
});

test('words stay as they are, and no digit is left in what can be said', () => {
  for (const { text, where } of allTexts) {
    if (!/[\d°%“·/×]/.test(text)) expect(aloud(text), where).toBe(text.replaceAll('\u00a0', ' '));
  }
  for (const n of [0, 0.05, 7.5, 13, 99, 100, 1_450, 99_999])
    for (const sign of ['', ' g', ' °C', ' °F', ' %', ' oz', ' min', ' h', ' m', ' cm'])
      expect(aloud(`It is ${n}${sign} now.`)).toMatch(/^It is [a-z, -]+( Fahrenheit)? now\.$/);
});

test('what is no clock time and no number of ours is left for the eye, and nothing throws', () => {
  for (const odd of ['99:99', '1234567', '1 : 5 : 5', '3/4'])
    expect(() => aloud(`It is ${odd}.`)).not.toThrow();
  expect(aloud('It is 1234567 g.')).toBe('It is 1234567 g.');
});
