import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { phrasesOf, type Named } from '../../../assets/make/voice/phrases.ts';
import { packOf } from '../../../assets/make/voice/spoken.ts';
import { layClips } from '../../../src/core/speech/clips.ts';
import { said } from '../../../src/core/speech/facts.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { sayNumber, type Unit } from '../../../src/core/speech/numbers.ts';
import {
  isPaced,
  PACES,
  RATED_FROM,
  rateOf,
  SYLLABLES_A_WORD,
  wordsIn,
} from '../../../src/core/speech/pace.ts';
import { utterancesOf } from '../../../src/core/speech/utterances.ts';
import { asSpoken, clipIndex } from './support/as-spoken.ts';
import { allTexts } from './support/catalogue.ts';
import { secondsOfMp3 } from './support/mp3.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const voice = join(root, 'assets/voice');
const index = clipIndex;
const formulas = readdirSync(join(root, 'assets/formulas')).map(
  (file) => JSON.parse(readFileSync(join(root, 'assets/formulas', file), 'utf8')) as Named,
);
const phrases = phrasesOf(allTexts, formulas);
const has = (id: string) => index.has(id);

/** What core/speech hands to the voice, with values of every kind. */
const VALUES = [
  said(
    {
      grams: 905,
      keepBack: 30,
      celsius: 25.5,
      minutes: 137,
      time: '19:15',
      until: '00:00',
      loaves: 13,
      load: 2,
      loads: 12,
      touch: 3,
      touches: 4,
      pot: 'the middle pot',
    },
    { heat: 'C', weight: 'g' },
  ),
  said(
    {
      grams: 1450,
      keepBack: 12,
      celsius: 31,
      minutes: 45,
      time: '3:05\u00a0pm',
      until: '12:00\u00a0am',
      loaves: 1,
      load: 1,
      loads: 1,
      touch: 1,
      touches: 3,
      pot: 'the pot',
    },
    { heat: 'F', weight: 'oz' },
  ),
];

/** A text with values of each kind in its place. */
const filledIn = (text: string): readonly string[] =>
  VALUES.map((values) =>
    text.replace(/\{(\w+)\}/g, (_, name: string) =>
      name in values ? fill(`{${name}}`, values) : name === 'line' ? '18.2 g of starter' : '12',
    ),
  );

describe('the spoken clips', () => {
  it('say every phrase of the catalogue, and nothing else', () => {
    const wanted = phrases.map(({ id }) => id);
    const how = 'words changed: npx tsx assets/make/voice/make.ts';
    expect(
      wanted.filter((id) => !index.has(id)),
      how,
    ).toEqual([]);
    expect(
      [...index.keys()].filter((id) => !wanted.includes(id)),
      how,
    ).toEqual([]);
    expect(wanted.length).toBeGreaterThan(700);
  });

  it('lie in their files one behind the other, whole, and are as long as the index tells', () => {
    for (const file of new Set([...index.values()].map((clip) => clip.file))) {
      const bytes = readFileSync(join(voice, file));
      let end = 0;
      for (const [id, clip] of index) {
        if (clip.file !== file) continue;
        expect(clip.start, id).toBe(end);
        end += clip.bytes;
        const { frames, seconds } = secondsOfMp3(bytes.subarray(clip.start, end));
        expect(frames, id).toBeGreaterThan(3);
        // The encoder's own delay and its last frame are silence around what is said.
        expect(seconds - clip.seconds, id).toBeGreaterThan(0.03);
        expect(seconds - clip.seconds, id).toBeLessThan(0.15);
      }
      expect(end, file).toBe(bytes.length);
    }
  });

  it('speak 140 to 160 words a minute wherever there are words enough to tell, as the index says', () => {
    let rated = 0;
    for (const { id, text } of phrases) {
      const { wpm, seconds } = index.get(id)!;
      const words = wordsIn(text).length;
      expect(wpm, id).toBeCloseTo((words * 60) / seconds, 0);
      if (words < RATED_FROM) {
        // A few words: as long as a word takes, no longer than a slow one.
        expect(seconds / words, id).toBeLessThan(1.2);
        continue;
      }
      rated += 1;
      expect(wpm, id).toBeGreaterThanOrEqual(140);
      expect(wpm, id).toBeLessThanOrEqual(160);
    }
    expect(rated).toBeGreaterThan(300);
  });

  // 32 kbit/s is what they need: at 24 a recogniser misses two pieces of numbers in ten in a noisy kitchen
  // instead of one (docs/decisions/voice.md). They are no part of the first load: the offline store fetches
  // them behind the first page, once a version. What children hear is half as much again.
  it.each([
    ['a baker hears', 9_500_000, (file: string) => !file.startsWith('ages')],
    ['children of any age hear', 5_500_000, (file: string) => file.startsWith('ages')],
  ])('take together, of what %s, less than %i bytes', (_, most, its) => {
    const sizes = readdirSync(voice)
      .filter(its)
      .map((file) => statSync(join(voice, file)).size);
    expect(sizes.reduce((a, b) => a + b, 0)).toBeLessThan(most);
  });

  it('leave no word out of a sentence of the catalogue', () => {
    let looked = 0;
    for (const { where, text } of allTexts) {
      if (packOf(where) === null || !/[.?]$/.test(text)) continue;
      for (const said of filledIn(text)) {
        looked += 1;
        expect(layClips(said, has).missing, `${where}: ${said}`).toEqual([]);
      }
    }
    expect(looked).toBeGreaterThan(500);
  });

  it.each(['grown', 'small'] as const)('keep their pace (%s), and are over in 8 s', (pace) => {
    const stretched: number[] = [];
    let slowest = Infinity;
    let slow = 0;
    let looked = 0;
    for (const { where, text } of allTexts) {
      if (packOf(where) === null) continue;
      for (const utterance of filledIn(text).flatMap((said) => utterancesOf(said, pace))) {
        const { spoken, seconds, by } = asSpoken(utterance, pace);
        looked += 1;
        stretched.push(by);
        const { wpm, syllables } = rateOf(spoken);
        const told = `${where}: ${utterance}: ${wpm.toFixed(0)}, ${syllables.toFixed(2)}`;
        expect.soft(seconds, told).toBeLessThanOrEqual(8);
        expect.soft(isPaced(spoken, pace), told).toBe(true);
        if (spoken.words.length < RATED_FROM) continue;
        expect.soft(wpm, told).toBeLessThanOrEqual(PACES[pace].most);
        if (wpm < PACES[pace].least) slow += 1;
        if (wpm < PACES[pace].least) slowest = Math.min(slowest, syllables);
      }
    }
    expect(looked).toBeGreaterThan(900);
    // Only long words make fewer a minute than they should be, and few prompts have so many of them.
    expect(slowest * 60).toBeGreaterThanOrEqual(PACES[pace].least * SYLLABLES_A_WORD);
    expect(slow / looked).toBeLessThan(0.08);
    expect(Math.max(...stretched)).toBeLessThan(1.4);
    // A grown-up hears nearly all of them as they were spoken.
    if (pace === 'grown') {
      const changed = stretched.filter((by) => by !== 1).length;
      expect(changed / looked).toBeLessThan(0.09);
    }
  });

  it('say every number with every unit, in few clips', () => {
    const units: Unit[] = [
      'gram',
      'ounce',
      'pound',
      'degree',
      'degree Fahrenheit',
      'percent',
      'minute',
      'hour',
      'day',
      'loaf',
      'load',
    ];
    for (let n = 0; n < 4000; n += 1)
      for (const value of [n / 20, n * 25])
        for (const unit of units.slice(n % 4, (n % 4) + 2)) {
          const words = sayNumber(Math.min(value, 99_999), unit, 2);
          const { clips, missing } = layClips(words, has);
          expect(missing, words).toEqual([]);
          expect(clips.length, words).toBeLessThanOrEqual(14);
        }
  });
});
