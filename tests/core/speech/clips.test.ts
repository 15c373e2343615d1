import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipId, layClips, secondsOf } from '../../../src/core/speech/clips.ts';
import { readClipIndex } from '../../../src/core/speech/clip-index.ts';

const having =
  (...texts: readonly string[]) =>
  (id: string): boolean =>
    texts.map(clipId).includes(id);
const ids = (words: string, has: (id: string) => boolean) =>
  layClips(words, has).clips.map(({ id }) => id);

describe('clips for an utterance', () => {
  it('are whole phrases where there are any, with numbers joined between them', () => {
    const has = having('eighteen', 'one', 'eight', 'one eight', 'grams', 'of', 'of salt', 'salt');
    expect(layClips('eighteen, one eight, grams of salt.', has)).toEqual({
      clips: [
        { id: 'eighteen', pause: 0.15 },
        { id: 'one eight', pause: 0.15 },
        { id: 'grams', pause: 0 },
        { id: 'of salt', pause: 0 },
      ],
      missing: [],
      own: [],
    });
  });

  it('are as few as can be, even where the longest first would take more', () => {
    const has = having('a b', 'a', 'b c d', 'c', 'd');
    expect(ids('a b c d', has)).toEqual(['a', 'b c d']);
  });

  it('part sentences by half a second, and do not cross them', () => {
    const { clips } = layClips('Stand back. Lid on?', having('stand back', 'lid on', 'back lid'));
    expect(clips).toEqual([
      { id: 'stand back', pause: 0.5 },
      { id: 'lid on', pause: 0 },
    ]);
    expect(secondsOf(clips, () => 1)).toBe(2.5);
  });

  it('leave out a word that nobody spoke, and say which', () => {
    expect(layClips('two grams of quibblewort.', having('two', 'grams', 'of'))).toEqual({
      clips: [
        { id: 'two', pause: 0 },
        { id: 'grams', pause: 0 },
        { id: 'of', pause: 0 },
      ],
      missing: ['quibblewort.'],
      own: [],
    });
    expect(layClips('', having())).toEqual({ clips: [], missing: [], own: [] });
  });

  it('say signs and digits as words', () => {
    expect(ids('Children stay 1 m back.', having('children stay one metre back'))).toEqual([
      'children stay one metre back',
    ]);
  });

  it('say every word once and in order, whatever there is', () => {
    const word = fc.constantFrom('hot', 'lid', 'now', 'back', 'it’s');
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 9 }),
        fc.array(fc.array(word, { minLength: 1, maxLength: 3 }), { maxLength: 6 }),
        (words, spoken) => {
          const text = words.join(' ');
          const { clips, missing } = layClips(text, having(...spoken.map((s) => s.join(' '))));
          const all = [...clips.flatMap(({ id }) => id.split(' ')), ...missing.map(clipId)];
          expect(all.sort()).toEqual(clipId(text).split(' ').sort());
        },
      ),
    );
  });
});

describe('the index', () => {
  const clip = { file: 'a.mp3', start: 0, bytes: 9, seconds: 1, wpm: 150 };
  it('is read by name', () => {
    expect(readClipIndex({ 'stand back': clip })?.get('stand back')).toEqual(clip);
  });
  it.each([
    [null],
    [[]],
    [{}],
    ['x'],
    [{ a: null }],
    [{ a: { ...clip, bytes: 0 } }],
    [{ a: { ...clip, start: -1 } }],
    [{ a: { ...clip, file: 3 } }],
    [{ a: { ...clip, seconds: 'long' } }],
  ])('is refused where it is none: %j', (found) => {
    expect(readClipIndex(found)).toBeNull();
  });
});

describe('words that somebody here wrote', () => {
  const has = having(
    'eighty',
    'grams',
    'of',
    'of salt',
    'bake',
    'jam',
    'lid off',
    'seventy',
    'live',
  );
  const own = (words: string, ...phrases: readonly string[]) => {
    const laid = layClips(words, has, phrases);
    return [laid.clips.map(({ id }) => id), laid.own];
  };

  it('are left out whole, so that the rest stands by itself, and are handed on as they were written', () => {
    expect(own('Eighty grams of Quince jam.', 'of Quince jam', 'Quince jam')).toEqual([
      ['eighty', 'grams'],
      ['of Quince jam'],
    ]);
    expect(own('Rye 70 bake: lid off.', 'Rye 70 bake')).toEqual([
      ['lid off'],
      ['Rye seventy, seven zero bake'],
    ]);
  });

  it('are said by their clip where there is one', () => {
    expect(own('Eighty grams of salt.', 'of salt', 'salt')).toEqual([
      ['eighty', 'grams', 'of salt'],
      [],
    ]);
  });

  it('are never half a clip of another word that looks like them', () => {
    expect(own('Ölive: lid off.', 'Ölive')).toEqual([['lid off'], ['Ölive']]);
    expect(own('Хлеб: lid off.', 'Хлеб')).toEqual([['lid off'], ['Хлеб']]);
  });

  it('come each by itself, in order, and what nobody here wrote is not among them', () => {
    expect(
      own('Quince bake: eighty quibbles. Plum jam, lid off.', 'Plum jam', 'Quince bake'),
    ).toEqual([
      ['eighty', 'lid off'],
      ['Quince bake', 'Plum jam'],
    ]);
    expect(own('Eighty grams.', '', ' ', '!')).toEqual([['eighty', 'grams'], []]);
  });
});
