/** Sound of one channel, samples −1…1. */
export interface Sound {
  readonly rate: number;
  readonly samples: Float32Array;
}

/**
 * How loud the shipped clips are, root mean square, and their highest sample, 0…1: −12.2 dB measured over
 * all of their files with ffmpeg's volumedetect (−12.3 to −11.9), and PEAK of assets/make/voice/render.ts.
 */
export const CLIP_LOUDNESS = 10 ** (-12.2 / 20);
export const CLIP_PEAK = 0.89;

/** Loudness is heard over this time, s. */
const MOMENT = 0.01;
/** Quieter than this is nobody speaking: a room's hum, dB of full. Judgement, no room was measured. */
const NOBODY_DB = -50;
/** So far under the loudest moment a voice still speaks, and so far over the quietest ones, dB. Judgement. */
const UNDER_DB = -32;
const OVER_DB = 8;
/** Where the loudest moment stands out of the quietest ones by less it is a noise, dB. Judgement. */
const STANDS_OUT_DB = 12;
/** Shorter than this is a knock, not a word, s. Judgement. */
const LEAST = 0.12;
/** Kept before and behind speech, s: a consonant's breath is quieter than the rest. As the shipped clips. */
const ROOM = 0.03;
/** Clips are kept with at most this many samples a second: a voice has little above a half of it. */
const MOST_RATE = 26_000;

const ratio = (db: number): number => 10 ** (db / 20);

const loudnessOf = (samples: Float32Array): number => {
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return Math.sqrt(sum / Math.max(1, samples.length));
};

/** From the first moment in which somebody speaks to the last; null where nobody does. */
export function trimSilence({ rate, samples }: Sound): Sound | null {
  const step = Math.max(1, Math.round(rate * MOMENT));
  const moments = Array.from({ length: Math.floor(samples.length / step) }, (_, i) =>
    loudnessOf(samples.subarray(i * step, (i + 1) * step)),
  );
  const inOrder = moments.toSorted((a, b) => a - b);
  const loudest = inOrder.at(-1) ?? 0;
  const quiet = inOrder[Math.floor(inOrder.length / 10)] ?? 0;
  if (loudest < ratio(NOBODY_DB) || loudest < quiet * ratio(STANDS_OUT_DB)) return null;
  const floor = Math.max(loudest * ratio(UNDER_DB), quiet * ratio(OVER_DB));
  const first = moments.findIndex((moment) => moment > floor);
  const last = moments.findLastIndex((moment) => moment > floor);
  if ((last + 1 - first) * MOMENT < LEAST) return null;
  const room = Math.round(rate * ROOM);
  return {
    rate,
    samples: samples.slice(Math.max(0, first * step - room), (last + 1) * step + room),
  };
}

/** Bends what is too high for a clip, so that a voice can be as loud as clips without a click. */
const bend = (sample: number): number => CLIP_PEAK * Math.tanh(sample / CLIP_PEAK);

/** As loud as the shipped clips, and no sample higher. */
export function levelToClips({ rate, samples }: Sound): Sound {
  const at = (gain: number): Float32Array => samples.map((sample) => bend(sample * gain));
  // The louder the gain the louder it is: the one that fits lies between.
  let [low, high] = [0, CLIP_LOUDNESS / Math.max(loudnessOf(samples), 1e-6)];
  while (loudnessOf(at(high)) < CLIP_LOUDNESS && high < 1e6) high *= 2;
  for (let i = 0; i < 14; i += 1) {
    const middle = (low + high) / 2;
    if (loudnessOf(at(middle)) < CLIP_LOUDNESS) low = middle;
    else high = middle;
  }
  return { rate, samples: at(high) };
}

/** With half as many samples as long as there are more than a voice needs. */
function thin({ rate, samples }: Sound): Sound {
  if (rate <= MOST_RATE) return { rate, samples };
  const half = new Float32Array(samples.length >> 1);
  for (let i = 0; i < half.length; i += 1) half[i] = (samples[2 * i]! + samples[2 * i + 1]!) / 2;
  return thin({ rate: rate / 2, samples: half });
}

/** What was recorded as a clip is: without silence around it, as loud as the others. Null: nobody spoke. */
export function makeClip(recorded: Sound): Sound | null {
  const trimmed = trimSilence(recorded);
  return trimmed && levelToClips(thin(trimmed));
}

/** A WAV file of one channel, 16 bits: every browser decodes it. */
export function waveOf({ rate, samples }: Sound): ArrayBuffer {
  const file = new ArrayBuffer(44 + samples.length * 2);
  const view = new DataView(file);
  const write = (at: number, text: string): void =>
    [...text].forEach((letter, i) => view.setUint8(at + i, letter.charCodeAt(0)));
  write(0, 'RIFF');
  view.setUint32(4, 36 + samples.length * 2, true);
  write(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, Math.round(rate), true);
  view.setUint32(28, Math.round(rate) * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  write(36, 'data');
  view.setUint32(40, samples.length * 2, true);
  samples.forEach((sample, i) => view.setInt16(44 + 2 * i, Math.round(sample * 32_767), true));
  return file;
}
