import { expect, test } from 'vitest';
import { REMEDIES, remedyFor } from '../../../src/core/log/remedies.ts';
import { causes } from '../../../src/core/speech/words/causes.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { showHeats } from '../../../src/core/speech/heats.ts';
import { sentencesOf, wordsOf } from '../speech/support/catalogue.ts';
import { grade } from '../speech/support/grade.ts';

/** Every sign, what lies behind it first, a word of what is done now and one of what is changed. */
const TABLE: readonly (readonly [string, string, string, RegExp | null, RegExp | null])[] = [
  ['levain', 'slow', 'cold', /one to four hours/, /twice/],
  ['levain', 'past', 'pastPeak', /use it now/, /cooler/],
  ['mix', 'soupy', 'miscounted', /no more flour/, /15 %/],
  ['mix', 'cold', 'flourAndRoom', /warm spot/, /flour and room/],
  ['mix', 'hot', 'flourAndRoom', /cool room/, /flour and room/],
  ['mix', 'noSalt', 'saltLeftOut', /fold twice/, /out loud/],
  ['folds', 'tears', 'tight', /15 to 30 minutes/, /Fewer pulls/],
  ['bulk', 'flat', 'under', /45 to 60 minutes/, /more levain/],
  ['bulk', 'ready', 'ready', /Divide now/, /Note/],
  ['bulk', 'fallen', 'over', /tray, now/, /sooner/],
  ['sheet', 'rips', 'early', /fold over the tear/, /one or two folds/],
  ['sheet', 'wet', 'wetFilling', /Blot/, /10 to 20 %/],
  ['divide', 'lumpy', 'scraps', /scraps inside/, /two cuts/],
  ['preshape', 'splits', 'tightSkin', /10 to 15 minutes/, /looser/],
  ['preshape', 'runs', 'slack', /tin/, /More folds/],
  ['basket', 'stuck', 'littleFlour', /scraper/, /Rice flour/],
  ['cold', 'still', 'under', /60 to 120 minutes/, /End the bulk later/],
  ['cold', 'over', 'over', /now from cold/, /\{fridgeHeat\}/],
  ['proof', 'far', 'forgotten', /20 to 45 minutes/, /sooner/],
  ['oven', 'burst', 'under', /bake on/, /seam down/],
  ['oven', 'flat', 'over', /right through/, /shorter/],
  ['oven', 'black', 'rackLow', /on the rack/, /shelf below/],
  ['oven', 'pale', 'ovenLow', /Lid off/, /Hotter/],
  ['oven', 'dark', 'ovenHot', /Cover/, /smaller/],
  ['oven', 'leaks', 'nearEdge', /cool, then .* outdoors/, /2 to 3 cm/],
  ['cool', 'crackles', 'usual', /Nothing/, null],
  ['cut', 'gummy', 'notBaked', /toast/, /\{crumbHeat\}/],
  ['cut', 'dense', 'under', /Toast/, /riper levain/],
  ['cut', 'flyingCrust', 'over', null, /two more signs/],
  ['cut', 'streaks', 'benchFlour', null, /Less flour/],
  ['handOver', 'soft', 'baggedWarm', /Open the bag/, /\{bagHeat\}/],
];

test.each(TABLE)('%s, %s: %s', (stage, sign, cause, now, next) => {
  const row = remedyFor(stage, sign)!;
  expect(row.causes[0]).toBe(cause);
  if (now === null) expect(row.words.now).toBeNull();
  else expect(row.words.now).toMatch(now);
  if (next === null) expect(row.words.next).toBeNull();
  else expect(row.words.next).toMatch(next);
});

test('the table is whole, and nothing else is found', () => {
  expect(REMEDIES.map(({ stage, sign }) => `${stage} ${sign}`)).toEqual(
    TABLE.map(([stage, sign]) => `${stage} ${sign}`),
  );
  expect(remedyFor('cut', 'leaks')).toBeNull();
  expect(remedyFor('toString', 'length')).toBeNull();
});

test.each(REMEDIES)('$stage, $sign: short, plain, filled', ({ words, causes: behind }) => {
  const heats = { ...showHeats({ heat: 'C', weight: 'g' }), crumbHeat: '93 °C' };
  for (const text of [words.now, words.next]) {
    if (text === null) continue;
    const sentences = sentencesOf(fill(text, heats));
    expect(sentences.length, text).toBeLessThanOrEqual(2);
    for (const one of sentences) expect(wordsOf(one).length, one).toBeLessThanOrEqual(12);
    expect(text).toMatch(/\.$/);
    expect(text, 'no blame').not.toMatch(/\b(you|your|mistake|wrong|fault|forgot)\b/i);
  }
  for (const one of sentencesOf(words.care ?? ''))
    expect(wordsOf(one).length, one).toBeLessThanOrEqual(12);
  expect(wordsOf(words.sign).length, words.sign).toBeLessThanOrEqual(5);
  expect(behind.length).toBeGreaterThan(0);
  for (const cause of behind) expect(wordsOf(causes[cause]).length, cause).toBeLessThanOrEqual(6);
});

test('all remedies together read at grade 6 or below', () => {
  const texts = REMEDIES.flatMap(({ words }) => [words.now, words.next, words.care ?? null]);
  expect(grade(texts.filter((text) => text !== null))).toBeLessThanOrEqual(6);
});

test('a caution stands where it can hurt: iron, clay, raw dough, fillings that spoil', () => {
  const care = (stage: string, sign: string) => remedyFor(stage, sign)?.words.care;
  for (const sign of ['black', 'pale', 'dark', 'leaks'])
    expect(care('oven', sign)).toMatch(/mitts/);
  expect(care('cold', 'over')).toMatch(/clay or enamel/);
  expect(care('mix', 'noSalt')).toMatch(/no tasting/);
  expect(care('bulk', 'fallen')).toMatch(/local food rules/);
});
