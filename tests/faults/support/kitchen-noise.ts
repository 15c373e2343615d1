import { loudness } from '../../../assets/make/voice/wave.ts';

/** Numbers from 0 to 1 that are the same every time (a linear congruential generator). */
export function sameEveryTime(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/**
 * Noise whose power falls by 3 dB an octave, as fans and running water make it: the mean of a dozen
 * rows, each drawn anew half as often as the one before (Voss and McCartney).
 */
export function pinkNoise(length: number, random: () => number): Float32Array {
  const rows = new Float32Array(12).map(() => random() - 0.5);
  const noise = new Float32Array(length);
  let sum = rows.reduce((a, b) => a + b, 0);
  for (let i = 0; i < length; i += 1) {
    const row = Math.min(rows.length - 1, i === 0 ? 0 : Math.clz32(i & -i) ^ 31);
    const next = random() - 0.5;
    sum += next - rows[row]!;
    rows[row] = next;
    noise[i] = sum + random() - 0.5;
  }
  return noise;
}

/** Silence before and behind, as between two things that are said. */
export function padded(samples: Int16Array, by: number): Int16Array {
  const all = new Int16Array(samples.length + 2 * by);
  all.set(samples, by);
  return all;
}

/** Speech with noise over it, so many dB below the speech by root mean square; no louder than full. */
export function inNoise(speech: Int16Array, noise: Float32Array, snr: number): Int16Array {
  const spoken = speech.filter((sample) => sample !== 0);
  const level = Math.sqrt(noise.reduce((sum, one) => sum + one * one, 0) / noise.length);
  const gain = (loudness(spoken) * 32_768) / level / 10 ** (snr / 20);
  const mixed = Float32Array.from(speech, (sample, i) => sample + noise[i % noise.length]! * gain);
  const most = mixed.reduce((peak, one) => Math.max(peak, Math.abs(one)), 1);
  const fit = Math.min(1, 32_767 / most);
  return Int16Array.from(mixed, (sample) => Math.round(sample * fit));
}
