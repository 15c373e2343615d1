/** One pulse: start and length in s, and its fundamental in Hz. */
interface Pulse {
  readonly at: number;
  readonly long: number;
  readonly f0: number;
}

interface Voice {
  readonly pulses: readonly Pulse[];
  /** Rise of each pulse, s. */
  readonly rise: number;
  /** Amplitudes of the partials, the fundamental first. */
  readonly partials: readonly number[];
}

type Kind = 'look' | 'act' | 'hot';

const FALL = 0.05;
const SOFT = [1, 0.5, 0.3, 0.2];
const KEEN = [1, 0.5, 0.2, 0.12];

const beat = (rate: number, longs: readonly number[], f0s: readonly number[]): Pulse[] =>
  longs.map((long, i) => ({ at: i / rate, long, f0: f0s[i % f0s.length] ?? 0 }));

/**
 * The rhythm of each call's own words: "come and LOOK", "it's TIME, it's TIME", "HOT-hot" three
 * times. Word-rhythm alarms are recognised best (Edworthy 2017); pitches ≥ 20 % and rates × 2 apart
 * (NUREG-0700).
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

/** The call's rhythm, for who has to check it. */
export const pulsesOf = (kind: Kind): readonly Pulse[] => VOICES[kind].pulses;

/** One tone of a call as samples in −1…1, at `rate` samples a second. */
export function callWave(kind: Kind, rate: number): Float32Array<ArrayBuffer> {
  const { pulses, rise, partials } = VOICES[kind];
  const last = pulses.at(-1);
  const samples = new Float32Array(Math.ceil(((last?.at ?? 0) + (last?.long ?? 0) + 0.05) * rate));
  const whole = partials.reduce((sum, a) => sum + a, 0);
  for (const { at, long, f0 } of pulses) {
    const begin = Math.round(at * rate);
    for (let i = 0; i < long * rate && begin + i < samples.length; i += 1) {
      const t = i / rate;
      const edge = Math.min(1, t / rise, (long - t) / FALL);
      const smooth = 0.5 - 0.5 * Math.cos(Math.PI * Math.max(0, edge));
      const tone = partials.reduce(
        (sum, a, n) => sum + a * Math.sin(2 * Math.PI * f0 * (n + 1) * t),
        0,
      );
      samples[begin + i] = (samples[begin + i] ?? 0) + (smooth * tone) / whole;
    }
  }
  return samples;
}
