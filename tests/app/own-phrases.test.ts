import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { ownWords } from '../../src/app/own-phrases.ts';
import { readFormula } from '../../src/core/formula/read-formula.ts';
import { readClipIndex } from '../../src/core/speech/clip-index.ts';
import { layClips } from '../../src/core/speech/clips.ts';
import { de } from '../../src/core/speech/de.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';

const index = readClipIndex(JSON.parse(readFileSync('assets/voice/index.json', 'utf8')))!;
const cherry = JSON.parse(readFileSync('assets/formulas/cherry-hazelnut.json', 'utf8')) as {
  name: string;
  fillings: { name: string }[];
};
const phrases = (change: (formula: typeof cherry) => void) => {
  const formula = structuredClone(cherry);
  change(formula);
  const read = readFormula(formula).formula!;
  return ownWords({
    kitchen: { bakes: {} },
    formulas: [
      { formula: read, file: 'own.json' },
      { formula: null, file: 'torn.json', reason: { key: 'formulaUnreadable' } as never },
    ],
    readsOwn: true,
  }).phrases;
};
const lay = (words: string, own: readonly string[]) => {
  const { clips, own: read } = layClips(words, (id) => index.has(id), own);
  return [clips.map(({ id }) => id), read];
};

afterEach(() => speakIn('en'));

describe('what somebody here wrote', () => {
  it('is left for the tablet’s own voice, and what is left of the sentence stands by itself', () => {
    const own = phrases((formula) => {
      formula.name = 'Quince and walnut';
      formula.fillings[0]!.name = 'stewed quince';
    });
    expect(lay('Eighty grams of stewed quince.', own)).toEqual([
      ['eighty', 'grams'],
      ['of stewed quince'],
    ]);
    expect(lay('Quince bake: Dough rests.', own)).toEqual([['dough rests'], ['Quince bake']]);
    expect(lay('Quince and walnut.', own)).toEqual([[], ['Quince and walnut']]);
  });

  it('is said by its clips where the bread came with the program', () => {
    const own = phrases(() => undefined);
    expect(lay('Eighty grams of strong wheat flour.', own)[1]).toEqual([]);
    expect(lay('Cherry bake: Dough rests.', own)).toEqual([['cherry bake', 'dough rests'], []]);
  });

  it('is looked for in English sentences in every tongue: clips are found by those', () => {
    const change = (formula: typeof cherry) => void (formula.name = 'Quince and walnut');
    const own = phrases(change);
    speakIn('de', de);
    expect(phrases(change)).toEqual(own);
    expect(own).toContain('Quince bake');
  });
});
