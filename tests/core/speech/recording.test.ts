import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWave } from '../../../assets/make/voice/wave.ts';
import {
  CLIP_LOUDNESS,
  CLIP_PEAK,
  levelToClips,
  makeClip,
  trimSilence,
  waveOf,
} from '../../../src/core/speech/recording.ts';
import { recordedOf } from '../../../src/core/speech/recorded.ts';

const RATE = 48_000;
/** Loudness by the second: each stretch so many seconds at so high a swing, over a hum. */
const made = (stretches: readonly (readonly [number, number])[], hum = 0.001, rate = RATE) => {
  const parts = stretches.map(([seconds, high]) =>
    Float32Array.from({ length: Math.round(seconds * rate) }, (_, i) => {
      // A voice's own shape: 150 Hz and some of its harmonics, in syllables of a fifth of a second.
      const t = i / rate;
      const syllable = 0.4 + 0.6 * Math.abs(Math.sin(Math.PI * 5 * t));
      const voice = [1, 2, 5].reduce((sum, n) => sum + Math.sin(2 * Math.PI * 150 * n * t) / n, 0);
      return high * syllable * voice * 0.6 + hum * Math.sin(2 * Math.PI * 97 * t);
    }),
  );
  const samples = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  parts.reduce((at, part) => (samples.set(part, at), at + part.length), 0);
  return { rate, samples };
};
const seconds = ({ rate, samples }: { rate: number; samples: Float32Array }) =>
  samples.length / rate;
const rms = (samples: Float32Array) =>
  Math.sqrt(samples.reduce((sum, s) => sum + s * s, 0) / samples.length);
const db = (of: number, to: number) => 20 * Math.log10(of / to);

describe('a recording', () => {
  it('loses the silence at both ends and keeps what is between two words', () => {
    const trimmed = trimSilence(
      made([
        [1.2, 0],
        [0.8, 0.2],
        [0.6, 0],
        [0.5, 0.1],
        [2, 0],
      ]),
    );
    expect(seconds(trimmed!)).toBeGreaterThan(1.88);
    expect(seconds(trimmed!)).toBeLessThan(1.99);
  });

  it('is trimmed over the noise of a kitchen too', () => {
    const trimmed = trimSilence(
      made(
        [
          [1, 0],
          [0.8, 0.2],
          [1, 0],
        ],
        0.02,
      ),
    );
    expect(seconds(trimmed!)).toBeGreaterThan(0.8);
    expect(seconds(trimmed!)).toBeLessThan(0.95);
  });

  it.each([
    ['nothing at all', made([])],
    ['no sound', made([[2, 0]], 0)],
    ['a hum', made([[2, 0]], 0.2)],
    [
      'a whisper far away',
      made(
        [
          [1, 0],
          [1, 0.002],
          [1, 0],
        ],
        0.0001,
      ),
    ],
    [
      'a knock',
      made([
        [1, 0],
        [0.04, 0.8],
        [1, 0],
      ]),
    ],
  ])('is none where nobody spoke: %s', (_, sound) => {
    expect(makeClip(sound)).toBeNull();
  });

  it('is as loud as the shipped clips, however loud it was spoken, and never higher', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (high) => {
        const clip = levelToClips(made([[0.7, high]], 0, 8_000));
        expect(Math.abs(db(rms(clip.samples), CLIP_LOUDNESS))).toBeLessThan(0.3);
        for (const sample of clip.samples) expect(Math.abs(sample)).toBeLessThanOrEqual(CLIP_PEAK);
      }),
      { numRuns: 20 },
    );
  });

  it('is kept as a file that says the same', () => {
    const clip = makeClip(
      made([
        [0.5, 0],
        [1, 0.2],
        [0.5, 0],
      ]),
    )!;
    expect(clip.rate).toBe(24_000);
    const read = readWave(Buffer.from(waveOf(clip)));
    expect(read.rate).toBe(24_000);
    expect(read.samples.length).toBe(clip.samples.length);
    read.samples.forEach((sample, i) => expect(sample / 32_767).toBeCloseTo(clip.samples[i]!, 3));
    expect(Math.abs(db(rms(clip.samples), CLIP_LOUDNESS))).toBeLessThan(0.3);
    // What was already thin stays as it is.
    expect(
      makeClip(
        made(
          [
            [0.5, 0],
            [1, 0.2],
            [0.5, 0],
          ],
          0.001,
          16_000,
        ),
      )!.rate,
    ).toBe(16_000);
  });
});

describe('recordings in an utterance', () => {
  const taken = (recorded: readonly string[]) => [
    ...recordedOf(
      ['eighteen', 'grams', 'of salt', 'stand back'],
      (id) => recorded.includes(id),
      (id) => ['eighteen', 'grams'].includes(id),
    ),
  ];
  it('stand for phrases one by one, for numbers only all together', () => {
    expect(taken([])).toEqual([]);
    expect(taken(['of salt', 'eighteen'])).toEqual(['of salt']);
    expect(taken(['eighteen', 'grams', 'stand back'])).toEqual(['eighteen', 'grams', 'stand back']);
  });
});
