import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { secondsToSay, utterancesOf } from '../../../src/core/speech/utterances.ts';
import { said, shown } from '../../../src/core/speech/facts.ts';
import { fill } from '../../../src/core/speech/fill.ts';
import { packOf } from '../../../assets/make/voice/spoken.ts';
import { asSpoken } from './support/as-spoken.ts';
import { BIG_BAKE, SYSTEMS } from './support/big-bake.ts';
import { allTexts, sentencesOf } from './support/catalogue.ts';

/** As long as anything of a bake is said. */
const LONG = { ...BIG_BAKE, celsius: 25.5, minutes: 137, loaf: 'the second loaf' };
/** Said as they are shown, digits and all. */
const AS_SHOWN = /\.(care|detail)$|^care\./;
/** Names that are not facts of a step, as long as they come. */
const OTHERS = { bake: 'Sunflower bake of seventeen thirty-five', count: 'first' };

describe('what is said at once', () => {
  it('takes no longer than its words at 140 a minute, and half a second between sentences', () => {
    expect(secondsToSay('fold the wet dough now')).toBeCloseTo(300 / 140);
    expect(secondsToSay('fold the dough. turn it.')).toBeCloseTo(300 / 140 + 0.5);
    // Digits and signs are said in words, and long words tell by their syllables: 11 of them.
    expect(secondsToSay('420 °F')).toBeCloseTo((11 / 1.2) * (60 / 140));
  });

  it('takes longer for small hands, and so is less at once', () => {
    expect(secondsToSay('fold the wet dough now', 'small')).toBeCloseTo(300 / 115);
    const [a, b] = [
      'Fold the dough and leave it on the bench.',
      'Then wet your hands, and fold it.',
    ];
    expect(utterancesOf(`${a} ${b}`)).toEqual([`${a} ${b}`]);
    expect(utterancesOf(`${a} ${b}`, 'small')).toEqual([a, b]);
  });

  it('is whole sentences, as many as 8 s hold', () => {
    const [a, b, c] = [
      'Lower it in, lid on, door shut.',
      'Children, stand back.',
      'Hot iron: dry mitts, both hands, face back.',
    ];
    expect(utterancesOf(`${a} ${b} ${c}`)).toEqual([`${a} ${b}`, c]);
    expect(utterancesOf(a)).toEqual([a]);
  });

  it('parts no two sentences with a no-break space between them, while they fit', () => {
    const [a, b] = [
      'It’s time: the salt goes in, cherry bake of six, and fold it.',
      'Cherry bake of four.',
    ];
    const c = 'List complete.';
    expect(utterancesOf(`${a} ${b} ${c}`)).toEqual([`${a} ${b}`, c]);
    expect(utterancesOf(`${a} ${b}\u00a0${c}`)).toEqual([a, `${b} ${c}`]);
    const long = 'Lift the lid of the left pot away from you, with both hands and dry mitts on.';
    expect(utterancesOf(`${b}\u00a0${long} ${c}`)).toEqual([b, long, c]);
  });

  it('begins a sentence behind another large, whatever number it begins with', () => {
    expect(
      utterancesOf('As reckoned. eighteen thirty is when. Cherry bake.\u00a0ten grams.'),
    ).toEqual(['As reckoned. Eighteen thirty is when. Cherry bake. Ten grams.']);
  });

  it('loses and changes no word, and is over in 8 s wherever a sentence lets it', () => {
    const word = fc.constantFrom('dough', 'twenty-five', '420', 'mitts,', 'back');
    const sentence = fc
      .array(word, { minLength: 1, maxLength: 20 })
      .map((words) => `And ${words.join(' ')}.`);
    fc.assert(
      fc.property(fc.array(sentence, { minLength: 1, maxLength: 6 }), (sentences) => {
        const text = sentences.join(' ');
        const all = utterancesOf(text);
        expect(all.join(' ')).toBe(text);
        for (const one of all)
          expect(secondsToSay(one) <= 8 || sentences.includes(one), one).toBe(true);
        // No two could have been one.
        all.slice(1).forEach((one, i) => {
          expect(secondsToSay(`${all[i]} ${one}`)).toBeGreaterThan(8);
        });
      }),
    );
  });
});

it('no sentence that can be said takes longer than 8 s by itself', () => {
  let looked = 0;
  for (const { where, text } of allTexts) {
    if (packOf(where) === null) continue;
    for (const { units, ...times } of SYSTEMS) {
      for (const how of AS_SHOWN.test(where) ? [shown] : [said, shown]) {
        const known = { ...how({ ...LONG, ...times }, units), ...OTHERS };
        const filled = text.replace(/\{(\w+)\}/g, (_, name: string) =>
          name in known ? fill(`{${name}}`, known) : 'the second water',
        );
        for (const sentence of sentencesOf(filled)) {
          looked += 1;
          const { seconds } = asSpoken(sentence, 'grown');
          expect(seconds, `${where}: ${sentence}`).toBeLessThanOrEqual(8);
        }
      }
    }
  }
  expect(looked).toBeGreaterThan(2_000);
});
