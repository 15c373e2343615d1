import { expect, it } from 'vitest';
import { louder } from '../../../src/core/ear/louder.ts';
import { meanPower, spokenPower } from '../../../src/core/ear/spoken-power.ts';
import { joined, quiet, tone } from './support/sounds.ts';

const SAID = joined(quiet(0.35), tone(0.6, 700), quiet(0.35));
const decibels = (power: number, other: number): number => 10 * Math.log10(power / other);

it('a louder kitchen is some 14 dB under who speaks in it, however loud they are', () => {
  for (const gain of [1, 0.02]) {
    const said = SAID.map((sample) => sample * gain);
    const noise = louder(said, 3).map((sample, n) => sample - said[n]!);
    const under = decibels(spokenPower(said), meanPower(noise));
    expect(under).toBeGreaterThan(13);
    expect(under).toBeLessThan(15);
  }
});

it('one saying has one copy, and each seed another kitchen', () => {
  expect(louder(SAID, 3)).toEqual(louder(SAID, 3));
  expect(louder(SAID, 4)).not.toEqual(louder(SAID, 3));
  expect(louder(SAID, 3)).toHaveLength(SAID.length);
});

it('silence stays silent, and nothing is made of nothing', () => {
  expect(louder(new Float32Array(1_600), 1)).toEqual(new Float32Array(1_600));
  expect(louder(new Float32Array(), 1)).toHaveLength(0);
});

it('pauses and the silence about it make a saying no quieter', () => {
  const bare = spokenPower(tone(0.6, 700));
  expect(decibels(spokenPower(SAID), bare)).toBeCloseTo(0, 1);
  expect(decibels(meanPower(SAID), bare)).toBeLessThan(-3);
  expect(spokenPower(new Float32Array(1_600))).toBe(0);
});
