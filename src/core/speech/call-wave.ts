/** One pulse: start and length in s, and its fundamental in Hz. */
interface Pulse {
  readonly at: number;
  readonly long: number;
  readonly f0: number;
}

interface Voice {
  readonly pulses: readonly Pulse[];
  /** Rise of each pulse, from silence to full, s. */
  readonly rise: number;
  /** Amplitudes of the partials, the fundamental first. */
  readonly partials: readonly number[];
}

type Kind = 'look' | 'act' | 'hot';

/** Fall of each pulse, s: short enough to leave the pulses apart, long enough not to click. */
const FALL = 0.05;
/** Highest sample: as loud as a tablet can be without clipping. */
const PEAK = 0.95;
/** Four partials, so that ears deaf to one hear another; most energy low, where older ears hear. */
const SOFT = [1, 0.5, 0.3, 0.2];
const KEEN = [1, 0.5, 0.2, 0.12];

const beat = (rate: number, longs: readonly number[], f0s: readonly number[]): Pulse[] =>
  longs.map((long, i) => ({ at: i / rate, long, f0: f0s[i % f0s.length] ?? 0 }));

/**
 * The rhythm of each call's own words: "come and LOO-OOK", "it's TIME, it's TIME", "HOT-hot" three
 * times. Word-rhythm alarms are recognised best (Edworthy 2017); pitches ≥ 20 % and rates × 2 apart
 * (NUREG-0700). The rises of act and hot are judgement: the more urgent, the sharper.
 */
const VOICES: Readonly<Record<Kind, Voice>> = {
  look: { pulses: beat(1.6, [0.22, 0.22, 0.5], [523]), rise: 0.04, partials: SOFT },
  act: { pulses: beat(3.3, [0.13, 0.25, 0.13, 0.25], [659]), rise: 0.02, partials: SOFT },
  hot: {
    pulses: beat(6.5, [0.13, 0.11, 0.13, 0.11, 0.13, 0.11], [831, 1047]),
    rise: 0.01,
    partials: KEEN,
  },
};

/** Σ aₙ sin(n·angle), by sin(n+1)x = 2 cos x · sin nx − sin(n−1)x: a tablet makes these while it waits. */
function chord(angle: number, partials: readonly number[]): number {
  const twice = 2 * Math.cos(angle);
  let before = 0;
  let sine = Math.sin(angle);
  let sum = 0;
  for (const amplitude of partials) {
    sum += amplitude * sine;
    [before, sine] = [sine, twice * sine - before];
  }
  return sum;
}

/** One tone of a call as samples in −0.95…0.95, at `rate` samples a second. */
export function callWave(kind: Kind, rate: number): Float32Array<ArrayBuffer> {
  const { pulses, rise, partials } = VOICES[kind];
  const end = Math.max(...pulses.map(({ at, long }) => at + long));
  const samples = new Float32Array(Math.ceil(end * rate) + 1);
  for (const { at, long, f0 } of pulses) {
    const begin = Math.round(at * rate);
    for (let i = 0; i < long * rate; i += 1) {
      const t = i / rate;
      const edge = Math.min(1, t / rise, (long - t) / FALL);
      const smooth = 0.5 - 0.5 * Math.cos(Math.PI * edge);
      samples[begin + i] = smooth * chord(2 * Math.PI * f0 * t, partials);
    }
  }
  let highest = 0;
  for (const sample of samples) highest = Math.max(highest, Math.abs(sample));
  for (let i = 0; i < samples.length; i += 1) samples[i] = ((samples[i] ?? 0) / highest) * PEAK;
  return samples;
}
