import { expect, test } from 'vitest';
import { syllables } from '../../../src/core/speech/syllables.ts';

test.each([
  ['dough', 1],
  ['loaves', 1],
  ['fridge', 1],
  ['table', 2],
  ['levain', 2],
  ['bubbles', 2],
  ['folded', 2],
  ['risen', 2],
  ['mixed', 1],
  ['rolled', 1],
  ['doubled', 2],
  ['hundred', 2],
  ['baskets', 2],
  ['allergen', 3],
  ['pieces', 2],
  ['rules', 1],
  ['likely', 2],
  ['rely', 2],
  ['nineteen', 2],
  ['ninety', 2],
  ['something', 2],
  ['metre', 2],
  ['centimetres', 4],
  ['hours', 2],
  ['Celsius', 3],
  ['{time}', 1],
  ['35', 2],
])('%s has %i', (word, count) => {
  expect(syllables(word)).toBe(count);
});

test('one too many is safer than one too few', () => {
  expect(syllables('temperature')).toBe(4);
});
