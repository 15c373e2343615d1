import { describe, expect, it } from 'vitest';
import { splitParts } from '../../../../src/core/circle/label/split-parts.ts';
import { withKind } from '../../../../src/core/circle/label/wanting.ts';

describe('what a packet lists', () => {
  it.each([
    ['sugar, cocoa butter, soya lecithin', ['sugar', 'cocoa butter', 'soya lecithin']],
    ['sugar;cocoa\nmilk\n\n', ['sugar', 'cocoa', 'milk']],
    ['chocolate (sugar, cocoa [a, b]), salt.', ['chocolate (sugar, cocoa [a, b])', 'salt']],
    ['a (b, c', ['a (b, c']],
    ['a) , b', ['a)', 'b']],
    [' , ; \n', []],
  ])('%j', (text, parts) => {
    expect(splitParts(text)).toEqual(parts);
  });

  it('is no more and no longer than a row of the circle takes', () => {
    const parts = splitParts(Array.from({ length: 300 }, () => 'x'.repeat(150)).join(','));
    expect(parts).toHaveLength(200);
    expect(Math.max(...parts.map(({ length }) => length))).toBe(120);
  });

  it('is never cut within a letter', () => {
    expect(splitParts(`${'x'.repeat(119)}🥖, ${'y'.repeat(119)}q\u0303`)).toEqual([
      'x'.repeat(119),
      'y'.repeat(119),
    ]);
  });
});

it('puts a kind in the place of an allergen without one', () => {
  expect(withKind(['milk', ' Fish'], 'fish', ' (anchovy)\n')).toEqual(['milk', 'fish (anchovy)']);
});
