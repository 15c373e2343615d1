/** It opens, or it is shut. */
export type EarTone = 'open' | 'shut';

/** Two notes, up as it opens and down as it shuts, Hz: lower by a quarter and more than any call begins. */
const NOTES: Readonly<Record<EarTone, readonly [number, number]>> = {
  open: [294, 392],
  shut: [392, 294],
};
/** A note rises and dies away in these times, s: plucked, where calls hold theirs. */
const RISE = 0.008;
const DIES = 0.03;
const NOTE = 0.09;
/** A small speaker has little below the second partial. */
const PARTIALS = [1, 0.5, 0.3];
/** Highest sample: ten dB and more under the softest call. */
const PEAK = 0.07;

/** What it sounds like, as samples at `rate` samples a second. */
export function earWave(which: EarTone, rate: number): Float32Array<ArrayBuffer> {
  const long = Math.round(NOTE * rate);
  const made = new Float32Array(2 * long + 1);
  NOTES[which].forEach((hertz, note) => {
    for (let n = 0; n < long; n += 1) {
      const at = n / rate;
      const loud = Math.min(1, at / RISE) * Math.exp(-at / DIES) * (1 - at / NOTE);
      const angle = 2 * Math.PI * hertz * at;
      const sum = PARTIALS.reduce((all, part, k) => all + part * Math.sin((k + 1) * angle), 0);
      made[note * long + n] = loud * sum;
    }
  });
  const highest = made.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return made.map((sample) => (sample / highest) * PEAK);
}
