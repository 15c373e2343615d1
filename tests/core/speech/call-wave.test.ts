import { describe, expect, it } from 'vitest';
import { callWave } from '../../../src/core/speech/call-wave.ts';

type Kind = Parameters<typeof callWave>[0];
const RATE = 48_000;

/** Energy by frequency (bins of RATE / 2^17 ≈ 0.37 Hz), by a plain radix-2 transform. */
function energies(samples: Float32Array): Float64Array {
  const n = 2 ** 17;
  const re = new Float64Array(n);
  const im = new Float64Array(n);
  const bits = Math.log2(n);
  samples.forEach((sample, i) => {
    let to = 0;
    for (let bit = 0; bit < bits; bit += 1) to = (to << 1) | ((i >> bit) & 1);
    re[to] = sample;
  });
  for (let size = 2; size <= n; size *= 2) {
    for (let k = 0; k < size / 2; k += 1) {
      const c = Math.cos((2 * Math.PI * k) / size);
      const s = -Math.sin((2 * Math.PI * k) / size);
      for (let a = k; a < n; a += size) {
        const b = a + size / 2;
        const x = re[b]! * c - im[b]! * s;
        const y = re[b]! * s + im[b]! * c;
        re[b] = re[a]! - x;
        im[b] = im[a]! - y;
        re[a]! += x;
        im[a]! += y;
      }
    }
  }
  return re.slice(0, n / 2).map((x, i) => x * x + im[i]! * im[i]!);
}
const hz = (bin: number) => (bin * RATE) / 2 ** 17;
const between = (spectrum: Float64Array, low: number, high: number) =>
  spectrum.reduce((sum, e, bin) => (hz(bin) >= low && hz(bin) < high ? sum + e : sum), 0);

/** The loudest frequency of a stretch, Hz. */
function pitch(samples: Float32Array): number {
  const spectrum = energies(samples);
  return hz(spectrum.indexOf(Math.max(...spectrum)));
}

/** Highest sample in each millisecond and the one after (a period of the lowest pitch is 1.9 ms). */
function envelope(samples: Float32Array): number[] {
  const step = RATE / 1000;
  return Array.from({ length: Math.floor(samples.length / step) }, (_, ms) =>
    samples.slice(ms * step, (ms + 2) * step).reduce((most, x) => Math.max(most, Math.abs(x)), 0),
  );
}

/** Pulses by where the envelope crosses a quarter of its highest: start and length in ms. */
function pulses(samples: Float32Array): { start: number; long: number }[] {
  const heights = envelope(samples);
  const level = Math.max(...heights) / 4;
  const found: { start: number; long: number }[] = [];
  let start = -1;
  [...heights, 0].forEach((height, ms) => {
    if (height > level && start < 0) start = ms;
    if (height <= level && start >= 0) {
      found.push({ start, long: ms - start });
      start = -1;
    }
  });
  return found;
}

const cut = (samples: Float32Array, { start, long }: { start: number; long: number }) =>
  samples.slice((start * RATE) / 1000, ((start + long) * RATE) / 1000);

/** Asked: pitch in Hz by pulse, pulses a second, rise in ms, and the rhythm (short or long). */
const ASKED: readonly [
  Kind,
  { f0: readonly number[]; rate: number; rise: number; rhythm: string },
][] = [
  ['look', { f0: [523], rate: 1.6, rise: 40, rhythm: 'short short long' }],
  ['act', { f0: [659], rate: 3.3, rise: 20, rhythm: 'short long short long' }],
  ['hot', { f0: [831, 1047], rate: 6.5, rise: 10, rhythm: 'long short long short long short' }],
];

describe.each(ASKED)('the wave of %s', (kind, { f0, rate, rise, rhythm }) => {
  const samples = callWave(kind, RATE);
  const found = pulses(samples);

  it('has the rhythm of its words', () => {
    const lengths = found.map(({ long }) => long);
    const middle = (Math.max(...lengths) + Math.min(...lengths)) / 2;
    expect(lengths.map((long) => (long > middle ? 'long' : 'short')).join(' ')).toBe(rhythm);
  });

  it('has its pulse rate', () => {
    const first = found[0]!.start;
    const perSecond = ((found.length - 1) * 1000) / (found.at(-1)!.start - first);
    expect(Math.abs(perSecond / rate - 1)).toBeLessThan(0.02);
  });

  it('has its pitch, pulse by pulse', () => {
    found.forEach((pulse, i) => {
      expect(Math.abs(pitch(cut(samples, pulse)) - f0[i % f0.length]!)).toBeLessThan(3);
    });
  });

  it('rises as it should', () => {
    for (const { start } of found) {
      const pulse = envelope(samples).slice(Math.max(0, start - rise), start + rise * 2);
      const top = Math.max(...pulse);
      const from = pulse.findIndex((height) => height > top * 0.01);
      const to = pulse.findIndex((height) => height > top * 0.97);
      expect(to - from).toBeGreaterThan(rise * 0.6);
      expect(to - from).toBeLessThan(rise * 1.2 + 2);
    }
  });

  it('has four partials or more in every pulse', () => {
    found.forEach((pulse, i) => {
      const spectrum = energies(cut(samples, pulse));
      const base = f0[i % f0.length]!;
      const of = (n: number) => between(spectrum, base * n - 20, base * n + 20);
      // A partial counts when it stands less than 20 dB under the first.
      expect([1, 2, 3, 4].filter((n) => of(n) > of(1) / 100)).toEqual([1, 2, 3, 4]);
    });
  });

  it('has its energy where ears are', () => {
    const spectrum = energies(samples);
    const all = between(spectrum, 0, RATE / 2);
    expect(between(spectrum, 500, 3000) / all).toBeGreaterThanOrEqual(0.9);
    expect(between(spectrum, 0, 1500) / all).toBeGreaterThanOrEqual(0.5);
  });

  it('is as loud as can be without clipping, and begins and ends in silence', () => {
    const highest = samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    expect(highest).toBeCloseTo(0.95, 3);
    expect(samples[0]).toBeCloseTo(0, 3);
    expect(samples.at(-1)).toBeCloseTo(0, 3);
  });

  it('is the same at any sample rate', () => {
    expect(callWave(kind, 44_100).length / 44_100).toBeCloseTo(samples.length / RATE, 3);
    expect(callWave(kind, 44_100).every(Number.isFinite)).toBe(true);
  });
});

describe('the three waves', () => {
  it('are told apart: pitches 20 % and more, pulse rates about twofold', () => {
    const pitches = ASKED.flatMap(([kind, { f0 }]) => {
      const samples = callWave(kind, RATE);
      const first = pulses(samples).slice(0, f0.length);
      return first.map((pulse) => pitch(cut(samples, pulse)));
    });
    expect(pitches).toHaveLength(4);
    pitches.slice(1).forEach((f0, i) => expect(f0 / pitches[i]!).toBeGreaterThan(1.2));
    const rates = ASKED.map(([kind]) => {
      const all = pulses(callWave(kind, RATE));
      return ((all.length - 1) * 1000) / (all.at(-1)!.start - all[0]!.start);
    });
    rates.slice(1).forEach((rate, i) => expect(rate / rates[i]!).toBeGreaterThan(1.9));
  });

  it('leave room for themselves: a tone is over before the next begins', () => {
    const every = { look: 20, act: 6, hot: 3 };
    for (const [kind] of ASKED) {
      expect(callWave(kind, RATE).length / RATE).toBeLessThan(every[kind]);
    }
  });
});
