import { HEARD_AT } from './heard-at.ts';

/** So much of what the fewer samples can hold is kept: what is above would come back as another pitch. */
const KEPT = 0.9;
/** So many zero crossings of the sinc stand on each side: what must not come back is 60 dB down. */
const CROSSINGS = 12;
/** So fine is the table of it, steps a sample. */
const FINE = 128;

/**
 * Sound of any rate as HEARD_AT samples a second, block by block as if it came all at once, half of the
 * filter late: a sinc under a Hann window (Smith, Digital Audio Resampling, ccrma.stanford.edu).
 *
 * @param rate samples a second of what comes
 * @example
 * const push = makeResampler(48_000);
 * push(new Float32Array(4_800)).length; // 1587: the filter has not seen the end of it
 */
export function makeResampler(rate: number): (block: Float32Array) => Float32Array<ArrayBuffer> {
  if (rate === HEARD_AT) return (block) => Float32Array.from(block);
  const step = rate / HEARD_AT;
  /** Cycles a sample of what comes. */
  const cut = (KEPT * Math.min(1, 1 / step)) / 2;
  const half = Math.ceil(CROSSINGS / (2 * cut));
  const table = Float32Array.from({ length: half * FINE + 2 }, (_, n) => {
    const at = n / FINE;
    const x = 2 * Math.PI * cut * at;
    const window = at < half ? 0.5 + 0.5 * Math.cos((Math.PI * at) / half) : 0;
    return 2 * cut * (x === 0 ? 1 : Math.sin(x) / x) * window;
  });
  /** What is still looked at, the first of it at `from`. */
  let kept = new Float32Array(0);
  let from = 0;
  let made = 0;

  const sampleAt = (at: number): number => {
    let sum = 0;
    for (let n = Math.max(from, Math.ceil(at - half)); n <= at + half; n += 1) {
      const far = Math.abs(at - n) * FINE;
      const low = Math.floor(far);
      const weight = table[low]! + (far - low) * (table[low + 1]! - table[low]!);
      sum += weight * kept[n - from]!;
    }
    return sum;
  };

  return (block) => {
    const all = new Float32Array(kept.length + block.length);
    all.set(kept);
    all.set(block, kept.length);
    kept = all;
    const end = from + kept.length;
    const out: number[] = [];
    for (; made * step + half < end - 1; made += 1) out.push(sampleAt(made * step));
    const past = Math.max(from, Math.floor(made * step - half));
    kept = kept.slice(past - from);
    from = past;
    return Float32Array.from(out);
  };
}
