import type { Frames } from '../../../../src/core/ear/frames.ts';
import type { EarPerson, Saying } from '../../../../src/core/ear/person.ts';
import { EAR_PHRASES, type EarPhrase } from '../../../../src/core/ear/phrases.ts';
import { seeded } from '../../day/support/seeded.ts';

const ROWS = 20;
const SIZE = 26;
const LEARNED = 96;

const random = (count: number, size: number, seed: number): Frames => {
  const { next } = seeded(seed);
  return {
    count,
    size,
    data: Float32Array.from({ length: count * size }, () => 4 * next() - 2),
  };
};
/** Put off in one and the same direction all along, it is as far from where it was. */
const shifted = ({ count, size, data }: Frames, by: number): Frames => ({
  count,
  size,
  data: data.map((value, i) => value + (i % size === 0 ? by : 0)),
});

/** A made saying of a phrase, `by` away from how it was learned; each `voice` says it in another way. */
export function saying(phrase: EarPhrase, by = 0, voice = 0, learned = false): Saying {
  const seed = 1 + EAR_PHRASES.indexOf(phrase) + voice;
  return {
    plain: shifted(random(ROWS, SIZE, seed), by),
    learned: learned ? random(6, LEARNED, 1_000 + seed) : null,
  };
}

/** Somebody who was heard to say these, three times each, a little differently. */
export const person = (
  id: string,
  phrases: readonly EarPhrase[],
  voice = 0,
  learned = false,
): EarPerson => ({
  id,
  mark: 'sun',
  child: false,
  sayings: Object.fromEntries(
    phrases.map((phrase) => [
      phrase,
      [0, 0.1, 0.2].map((by) => saying(phrase, -by, voice, learned)),
    ]),
  ),
});

/** A saying in which nothing changes. */
export const flat = (count: number, value = 0): Saying => ({
  plain: { count, size: SIZE, data: new Float32Array(count * SIZE).fill(value) },
  learned: null,
});
