import { describe, expect, it } from 'vitest';
import { earWave } from '../../../src/core/ear/ear-wave.ts';
import { loudnessAt } from '../../../src/core/speech/burst.ts';
import { callWave } from '../../../src/core/speech/call-wave.ts';

const RATE = 48_000;
const highest = (sound: Float32Array) =>
  sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);

/** The pitch at which a stretch is most like itself, Hz. */
function pitchOf(sound: Float32Array): number {
  const like = (lag: number) => {
    let sum = 0;
    for (let n = 0; n + lag < sound.length; n += 1) sum += sound[n]! * sound[n + lag]!;
    return sum;
  };
  let best = 0;
  for (let lag = 40, most = 0; lag < 250; lag += 1) {
    if (like(lag) <= most) continue;
    [best, most] = [lag, like(lag)];
  }
  return RATE / best;
}
const notesOf = (which: 'open' | 'shut') => {
  const sound = earWave(which, RATE);
  const half = sound.length >> 1;
  return [pitchOf(sound.subarray(0, half)), pitchOf(sound.subarray(half))] as const;
};

describe('what opens and shuts sounds like', () => {
  it('is two notes, up and down, both a fifth and more off every call’s', () => {
    const [[low, high], shut] = [notesOf('open'), notesOf('shut')];
    expect(high).toBeGreaterThan(low * 1.2);
    expect(shut[0]).toBeCloseTo(high, -1);
    expect(shut[1]).toBeCloseTo(low, -1);
    const call = callWave('look', RATE);
    expect(pitchOf(call.subarray(0, RATE / 10))).toBeGreaterThan(high * 1.2);
  });

  it.each(['open', 'shut'] as const)('is short, soft and without a click: %s', (which) => {
    const sound = earWave(which, RATE);
    expect(sound.length / RATE).toBeLessThanOrEqual(0.2);
    expect([sound[0], Math.abs(sound.at(-1)!)]).toEqual([0, 0]);
    const softest = highest(callWave('look', RATE)) * 10 ** (loudnessAt('look', 0) / 20);
    expect(20 * Math.log10(softest / highest(sound))).toBeGreaterThanOrEqual(10);
  });
});
