import { describe, expect, it } from 'vitest';
import { stretch } from '../../../src/core/speech/stretch.ts';

const RATE = 16_000;
/** A voice that holds one note: 120 Hz with its overtones. */
const note = (seconds: number, f0 = 120): Float32Array =>
  Float32Array.from({ length: seconds * RATE }, (_, i) =>
    [1, 2, 3, 5].reduce((sum, n) => sum + Math.sin((2 * Math.PI * f0 * n * i) / RATE) / (5 * n), 0),
  );
/** Waves a second, by the length that repeats best. */
function pitchOf(sound: Float32Array): number {
  const from = sound.length >> 1;
  const alike = (lag: number): number => {
    let sum = 0;
    for (let i = 0; i < 1_600; i += 1) sum += sound[from + i]! * sound[from + i + lag]!;
    return sum;
  };
  let best = 60;
  for (let lag = 60; lag < 160; lag += 1) if (alike(lag) > alike(best)) best = lag;
  return RATE / best;
}
const loudness = (sound: Float32Array): number =>
  Math.sqrt(sound.reduce((sum, s) => sum + s * s, 0) / sound.length);

describe('speech that is stretched', () => {
  it.each([0.8, 0.95, 1.1, 1.25, 1.4])('by %f takes so long, in the same voice', (by) => {
    const sound = note(1);
    const made = stretch(sound, RATE, by);
    expect(made.length).toBe(Math.round(RATE * by));
    expect(Math.abs(pitchOf(made) - pitchOf(sound))).toBeLessThan(2);
    // No seam is heard: as loud all along.
    for (let from = 0; from + 320 <= made.length - 640; from += 320)
      expect(loudness(made.subarray(from, from + 320)) / loudness(sound)).toBeCloseTo(1, 0.7);
    let jump = 0;
    for (let i = 1; i < made.length - 640; i += 1)
      jump = Math.max(jump, Math.abs(made[i]! - made[i - 1]!));
    let usual = 0;
    for (let i = 1; i < sound.length; i += 1)
      usual = Math.max(usual, Math.abs(sound[i]! - sound[i - 1]!));
    expect(jump).toBeLessThan(usual * 1.3);
  });

  it('keeps its silence and its order', () => {
    const sound = new Float32Array(RATE);
    sound.set(note(0.3), 0);
    sound.set(note(0.3, 180), RATE * 0.7);
    const made = stretch(sound, RATE, 1.25);
    const at = (from: number, until: number) =>
      loudness(made.subarray(from * RATE, until * RATE)) > 0.01;
    expect([at(0.05, 0.3), at(0.42, 0.82), at(0.92, 1.2)]).toEqual([true, false, true]);
    expect(pitchOf(made.subarray(0.9 * RATE))).toBeGreaterThan(170);
  });

  it('is the same where it need not be, and is nothing where there is none', () => {
    const sound = note(0.2);
    expect(stretch(sound, RATE, 1)).toEqual(sound);
    expect(stretch(new Float32Array(0), RATE, 1.2)).toHaveLength(0);
  });

  it('is as quick at the rate of a sound card', () => {
    const sound = new Float32Array(48_000 * 2).map((_, i) => Math.sin(i / 40));
    const began = performance.now();
    expect(stretch(sound, 48_000, 1.2)).toHaveLength(115_200);
    expect(performance.now() - began).toBeLessThan(1_000);
  });
});
