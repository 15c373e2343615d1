import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import {
  DAY_FACTS,
  LOAF_SIGNS,
  SIGN_NAMES,
  type LoafAnswers,
} from '../../../src/core/log/loaf-names.ts';
import type { LoafDay } from '../../../src/core/log/loaf-day.ts';
import { LOAF_MODEL, readLoaf } from '../../../src/core/log/read-loaf.ts';
import type { CutRead } from '../../../src/core/records/cut-read.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { cutLoaf } from '../../../src/core/speech/words/cut-loaf.ts';
import { REMEDIES } from '../../../src/core/log/remedies.ts';
import { tellRemedy } from '../../../src/core/speech/tell-remedy.ts';
import { tellLoaf } from '../../../src/core/speech/tell-loaf.ts';
import { layClips } from '../../../src/core/speech/clips.ts';
import { clipIndex } from './support/as-spoken.ts';
import { grade } from './support/grade.ts';
import { sentencesOf, wordsOf } from './support/catalogue.ts';

const readOf = (answers: LoafAnswers, day: LoafDay = {}): CutRead => {
  const { says, causes, change, because } = readLoaf(answers, day);
  return { says, causes, change, because, model: LOAF_MODEL };
};
const answers: fc.Arbitrary<LoafAnswers> = fc.record(
  Object.fromEntries(
    SIGN_NAMES.map((sign) => [sign, fc.constantFrom(...LOAF_SIGNS[sign], 'unsure')]),
  ),
  { requiredKeys: [] },
);

afterEach(() => speakIn('en'));

describe('what is told of a cut loaf', () => {
  it('has the likelier cause first, the one change, and what of that day speaks for it', () => {
    const told = tellLoaf(
      readOf({ crumb: 'gummy', spread: 'tall', base: 'even' }, { cooledMinutes: 20 }),
    );
    expect(told.headline).toBe('Likely: cut while warm');
    expect(told.change).toBe('Let it cool for two hours before you cut it.');
    expect(told.because).toBe('That day agrees: how long it cooled.');
    expect(told.said).toMatch(/^Likely cut while warm\. .*Let it cool for two hours/);
  });

  it('is said in French as a Frenchman would, with no blank left where the colon stood', () => {
    speakIn('fr', fr);
    const told = tellLoaf(
      readOf({ crumb: 'gummy', spread: 'tall', base: 'even' }, { cooledMinutes: 20 }),
    );
    expect(told.headline).toBe('Sans doute\u202f: coupé tiède');
    expect(told.said).toMatch(/^Sans doute coupé tiède\. /);
    expect(told.said).not.toMatch(/[:\u202f]/);
  });

  it('is hard to say of one sign, with two causes and nothing to change', () => {
    const told = tellLoaf(readOf({ crumb: 'gummy', base: 'unsure', crust: 'unsure' }));
    expect(told).toMatchObject({ headline: 'Hard to say', change: null, because: null });
    expect(told.detail).toMatch(/^Perhaps .*, or .*\.$/);
  });

  it('fits its page and its breath, whatever was seen', () => {
    const all: string[] = [];
    fc.assert(
      fc.property(answers, fc.subarray([...DAY_FACTS]), (said, because) => {
        const told = tellLoaf({ ...readOf(said), because });
        expect(wordsOf(told.headline).length).toBeLessThanOrEqual(7);
        for (const text of [told.detail, told.change, told.said])
          for (const one of sentencesOf(text ?? ''))
            expect(wordsOf(one).length, one).toBeLessThanOrEqual(12);
        expect(Object.values(told).join(' ')).not.toMatch(/[{}]|undefined/);
        expect(layClips(told.said, (id) => clipIndex.has(id)).missing).toEqual([]);
        all.push(told.said);
      }),
    );
    expect(grade(all)).toBeLessThanOrEqual(6);
  });
});

it('asks each sign, and cautions about each remedy, in words that have a clip', () => {
  const texts = [
    ...Object.values(cutLoaf).map(({ ask }) => ask),
    ...REMEDIES.flatMap((row) => tellRemedy(row, { heat: 'C', weight: 'g' }, 0).care ?? []),
  ];
  for (const text of texts)
    expect(layClips(text, (id) => clipIndex.has(id)).missing, text).toEqual([]);
  expect(texts.length).toBeGreaterThan(10);
});
