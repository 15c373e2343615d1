import { describe, expect, it } from 'vitest';
import { HEARD_AT } from '../../../src/core/ear/heard-at.ts';
import { makeResampler } from '../../../src/core/ear/resample.ts';

const tone = (hertz: number, rate: number, seconds = 0.5) =>
  Float32Array.from({ length: seconds * rate }, (_, n) =>
    Math.sin((2 * Math.PI * hertz * n) / rate),
  );
const db = (sound: Float32Array) =>
  10 * Math.log10(sound.reduce((sum, s) => sum + s * s, 0) / sound.length + 1e-12);
/** Without where the filter sees the beginning. */
const inside = (sound: Float32Array) => sound.subarray(200);
const RATES = [16_000, 44_100, 48_000, 96_000, 8_000];

describe('sound of another rate', () => {
  it.each(RATES)('is the same tone at the same instant: from %i Hz', (rate) => {
    for (const hertz of [100, 1_000, 2_800]) {
      const made = makeResampler(rate)(tone(hertz, rate));
      expect(made.length).toBeGreaterThan(0.49 * HEARD_AT);
      const wanted = tone(hertz, HEARD_AT);
      const off = inside(made).map((sample, n) => sample - wanted[n + 200]!);
      // Half a per cent of it: no ear, and no sum, tells them apart.
      expect(db(off), `${hertz} Hz`).toBeLessThan(-46);
    }
  });

  it.each([44_100, 48_000, 96_000])(
    'has nothing of what is too high for it: from %i Hz',
    (rate) => {
      for (const hertz of [9_500, 12_000, 20_000]) {
        const made = makeResampler(rate)(tone(hertz, rate));
        expect(db(inside(made)), `${hertz} Hz`).toBeLessThan(-60);
      }
    },
  );

  it.each(RATES)('is the same in blocks of any length: from %i Hz', (rate) => {
    const sound = tone(440, rate);
    const whole = makeResampler(rate)(sound);
    const push = makeResampler(rate);
    const parts: number[] = [];
    for (let at = 0, long = 1; at < sound.length; at += long, long = 1 + ((long * 7) % 1_023))
      parts.push(...push(sound.subarray(at, at + long)));
    expect(Float32Array.from(parts)).toEqual(whole);
  });
});
