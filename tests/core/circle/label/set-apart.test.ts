import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainText } from '../../../../src/core/circle/label/plain-text.ts';
import { saidIn, setApart, termsOf } from '../../../../src/core/circle/label/set-apart.ts';

/** What is set apart between stars. */
const starred = (text: string, terms: readonly string[]): string =>
  setApart(text, terms)
    .map((run) => (run.apart ? `*${run.text}*` : run.text))
    .join('');

describe('allergens set apart in a text', () => {
  it.each([
    ['strong wheat flour', ['wheat'], 'strong *wheat* flour'],
    ['toasted hazelnuts', ['hazelnut'], 'toasted *hazelnuts*'],
    ['hard, aged cheese', ['milk'], 'hard, aged cheese (*milk*)'],
    ['spelt flour', ['spelt wheat'], 'spelt flour (*spelt wheat*)'],
    ['buckwheat flour', ['wheat'], 'buckwheat flour (*wheat*)'],
    ['eggplant', ['egg'], 'eggplant (*egg*)'],
    ['Eggs', ['egg'], '*Eggs*'],
    [
      'dark chocolate (cocoa, Soy lecithin)',
      ['soya', 'milk'],
      'dark chocolate (cocoa, *Soy* lecithin) (*milk*)',
    ],
    ['milk-free spread', ['milk'], 'milk-free spread (*milk*)'],
    ['Brazil nuts', ['Brazil nut'], '*Brazil nuts*'],
    ['rolled oats', ['oats'], 'rolled *oats*'],
    ['plain', [], 'plain'],
  ])('%s', (text, terms, told) => {
    expect(starred(text, terms)).toBe(told);
  });

  it('keeps every letter of a text, whatever it is, and each name somewhere', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.array(fc.string({ minLength: 1 }), { maxLength: 3 }),
        (text, terms) => {
          const runs = setApart(text, terms);
          expect(
            runs
              .map((run) => run.text)
              .join('')
              .startsWith(text),
          ).toBe(true);
        },
      ),
    );
  });

  it.each([
    ['dark chocolate (cocoa, soy lecithin)', ['soya']],
    ['toasted hazelnuts', ['tree nuts (hazelnut)']],
    ['spelt wheat flour', ['gluten (spelt wheat)']],
    ['malted wheat flour', ['gluten (wheat)']],
    ['whey powder', ['milk']],
    ['tahini', ['sesame']],
    ['coconut milk', []],
    ['oat milk', ['gluten (oats)']],
    ['peanut-free biscuit', []],
    ['butternut squash', []],
    ['buckwheat', []],
    ['nutmeg', []],
    ['anchovies', ['fish']],
  ])('%s says %s', (text, said) => {
    expect(saidIn(text)).toEqual(said);
  });

  it('names grains and nuts by their kind, and what a file had as it had it', () => {
    expect(
      termsOf(['gluten (rye)', 'tree nuts (walnut, pecan)', 'milk', 'fish (cod)', 'kiwi']),
    ).toEqual(['rye', 'walnut', 'pecan', 'milk', 'fish', 'kiwi']);
  });
});

describe('a text on a label', () => {
  it.each([
    ['  rye\n\tflour  ', 'rye flour'],
    ['mi\u200blk\u202e', 'milk'],
    ['cafe\u0301', 'café'],
    ['<b>bold</b>', '<b>bold</b>'],
    ['\u0000\u0007', ''],
  ])('%j', (text, told) => {
    expect(plainText(text)).toBe(told);
  });

  it('is never longer than 200 signs, nor cut within one', () => {
    expect([...plainText('🥖'.repeat(300))]).toHaveLength(200);
    expect(plainText('🥖'.repeat(300)).endsWith('🥖')).toBe(true);
  });
});
