import Meyda from 'meyda';
import { halved, levelled, moving, type Frames } from '../../core/ear/frames.ts';
import { HEARD_AT, MARGIN, type Cut } from '../../core/ear/listener.ts';
import { spokenPower } from '../../core/ear/spoken-power.ts';
import type { SayingEngine } from './engine.ts';

/** A window and a step of the cepstrum, samples: 32 and 10 ms, as they are used for speech. */
const WINDOW = 512;
const STEP = 160;
/** Bands of the ear, and how many numbers are made of them; both are usual for speech. */
const BANDS = 26;
const SIZE = 13;
/** Kept of the margins, samples: the rest of them is the room's. */
const EDGE = HEARD_AT * 0.05;
/** What is said is brought to this, root mean square: what is far below it, as a room is, then counts for nothing. */
const SPOKEN = 0.039;

/** High sounds are as loud as low ones in it: consonants count. */
const bright = (sound: Float32Array): Float32Array<ArrayBuffer> =>
  Float32Array.from(sound, (sample, n) => sample - 0.97 * (sound[n - 1] ?? sample));

function cepstrum(sound: Float32Array): Frames {
  Meyda.bufferSize = WINDOW;
  Meyda.sampleRate = HEARD_AT;
  Meyda.melBands = BANDS;
  Meyda.numberOfMFCCCoefficients = SIZE;
  Meyda.windowingFunction = 'hamming';
  const count = Math.max(0, Math.floor((sound.length - WINDOW) / STEP) + 1);
  const data = new Float32Array(count * SIZE);
  for (let n = 0; n < count; n += 1) {
    const row = Meyda.extract('mfcc', sound.subarray(n * STEP, n * STEP + WINDOW));
    data.set(row as unknown as number[], n * SIZE);
  }
  return { count, size: SIZE, data };
}

/** The shape of a saying's sound, a row every 20 ms. */
export function plainFrames({ sound, lead }: Cut): Frames {
  const made = bright(sound);
  const power = spokenPower(made);
  const gain = power > 0 ? SPOKEN / Math.sqrt(power) : 0;
  const said = made.subarray(Math.max(0, lead - EDGE), Math.max(0, made.length - (MARGIN - EDGE)));
  return halved(moving(levelled(cepstrum(said.map((sample) => sample * gain)))));
}

/** What tells sayings apart by the shape of their sound alone. */
export const plainEngine: SayingEngine = {
  saying: (cut) => Promise.resolve({ plain: plainFrames(cut), learned: null }),
};
