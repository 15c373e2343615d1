import { describe, expect, it } from 'vitest';
import { CALL_STAGES } from '../../src/core/log/call-stages.ts';
import { lessonPages } from '../../src/core/lessons/lesson-pages.ts';
import { BAKE_STAGES, OVEN_STAGES } from '../../src/core/records/stage.ts';
import { lessonPage } from '../../src/core/speech/words/lesson-page.ts';
import { lessons } from '../../src/core/speech/words/lessons.ts';
import { sentencesOf, wordsOf } from './speech/support/catalogue.ts';

const STAGES = [...BAKE_STAGES, ...OVEN_STAGES];
const ORDER: readonly (string | null)[] = [null, lessonPage.newWord, lessonPage.sign];

/** Looks that ask for signs, and the wait before each, in which they are taught. */
const TAUGHT = {
  'levain.look': 'levain.ripening',
  'bulk.look': 'bulk.proving',
  'proof.poke': 'proof.warm',
  judge: 'lidded',
} as const;

describe('a lesson', () => {
  it.each(STAGES)('of %s tells why first, then a word, then signs, each in few words', (stage) => {
    const pages = lessonPages(stage);
    const ranks = pages.map(({ kind }) => ORDER.indexOf(kind));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(ranks).not.toContain(-1);
    for (const { title, text } of pages) {
      expect(wordsOf(title).length).toBeLessThanOrEqual(7);
      for (const one of sentencesOf(text)) expect(wordsOf(one).length).toBeLessThanOrEqual(14);
    }
  });

  it('is there for most steps of a bake, and never where something hot calls', () => {
    const taught = STAGES.filter((stage) => lessonPages(stage).length > 0);
    expect(taught.length).toBeGreaterThanOrEqual(30);
    const calls: Readonly<Record<string, string>> = CALL_STAGES;
    for (const stage of taught) expect(calls[stage] ?? null, stage).not.toBe('hot');
  });

  it.each(Object.entries(TAUGHT))(
    'of the signs of %s is given in the wait before it',
    (_, wait) => {
      const signs = lessonPages(wait).filter(({ kind }) => kind === lessonPage.sign);
      expect(signs.length).toBeGreaterThan(1);
      expect(new Set(signs.map(({ sketch }) => sketch)).size).toBe(signs.length);
    },
  );

  it('explains each word of the trade once', () => {
    const words = Object.values(lessons).flatMap(({ word }) => (word ? [word.name] : []));
    expect(new Set(words).size).toBe(words.length);
    expect(words.length).toBeGreaterThanOrEqual(12);
  });
});
