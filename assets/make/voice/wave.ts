/** Sound as 16-bit samples of one channel, and what is measured of it. */
export interface Wave {
  readonly rate: number;
  readonly samples: Int16Array;
}

/** Quieter than this against its loudest moment is not speech, dB. */
const SILENT_DB = -42;
/** Kept before and behind speech, s: a consonant's breath is quieter than the rest. */
const ROOM = 0.02;
const MOMENT = 0.005;
/** A pause within a sentence, s: stretched for small hands it is still below a fifth of a second. */
const LONGEST = 0.12;

/** Reads a plain WAV file of one channel, 16 bits. */
export function readWave(file: Buffer): Wave {
  let at = 12;
  let rate = 0;
  while (at + 8 <= file.length) {
    const name = file.toString('latin1', at, at + 4);
    const long = file.readUInt32LE(at + 4);
    if (name === 'fmt ') rate = file.readUInt32LE(at + 12);
    if (name === 'data') {
      const end = Math.min(file.length, at + 8 + long);
      const bytes = file.subarray(at + 8, end - ((end - at) % 2));
      const samples = new Int16Array(bytes.length >> 1);
      for (let i = 0; i < samples.length; i += 1) samples[i] = bytes.readInt16LE(i * 2);
      return { rate, samples };
    }
    at += 8 + long + (long % 2);
  }
  throw new Error('A WAV file without sound.');
}

export function writeWave({ rate, samples }: Wave): Buffer {
  const head = Buffer.alloc(44);
  head.write('RIFF', 0, 'latin1');
  head.writeUInt32LE(36 + samples.length * 2, 4);
  head.write('WAVEfmt ', 8, 'latin1');
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(rate, 24);
  head.writeUInt32LE(rate * 2, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36, 'latin1');
  head.writeUInt32LE(samples.length * 2, 40);
  return Buffer.concat([head, Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength)]);
}

/** Root mean square, 0…1. */
export const loudness = (samples: Int16Array): number => {
  let sum = 0;
  for (const sample of samples) sum += (sample / 32_768) ** 2;
  return Math.sqrt(sum / Math.max(1, samples.length));
};

/** Samples of a moment, and whether each moment is speech. */
function moments({ rate, samples }: Wave): { step: number; speaks: readonly boolean[] } {
  const step = Math.round(rate * MOMENT);
  const loud = Array.from({ length: Math.floor(samples.length / step) }, (_, i) =>
    loudness(samples.subarray(i * step, (i + 1) * step)),
  );
  const floor = Math.max(...loud) * 10 ** (SILENT_DB / 20);
  return { step, speaks: loud.map((one) => one > floor) };
}

/** Without the silence before and behind what is said. */
export function trim(wave: Wave): Wave {
  const { rate, samples } = wave;
  const { step, speaks } = moments(wave);
  const [first, last] = [speaks.indexOf(true), speaks.lastIndexOf(true)];
  const room = Math.round(rate * ROOM);
  return {
    rate,
    samples: samples.slice(Math.max(0, first * step - room), (last + 1) * step + room),
  };
}

/** With no pause longer than a sentence bears: the middle of it is cut out. */
export function tighten(wave: Wave): Wave {
  const { rate, samples } = wave;
  const { step, speaks } = moments(wave);
  const most = Math.round(LONGEST / MOMENT);
  const kept: number[] = [];
  let from = 0;
  for (let i = 1; i <= speaks.length; i += 1) {
    if (i < speaks.length && speaks[i] === speaks[from]) continue;
    const long = i - from;
    const cut = speaks[from] || long <= most ? 0 : long - most;
    const half = Math.floor((long - cut) / 2);
    for (let k = 0; k < long; k += 1) if (k < half || k >= half + cut) kept.push(from + k);
    from = i;
  }
  const made = new Int16Array(kept.length * step + (samples.length % step));
  kept.forEach((moment, i) =>
    made.set(samples.subarray(moment * step, (moment + 1) * step), i * step),
  );
  made.set(samples.subarray(speaks.length * step), kept.length * step);
  return { rate, samples: made };
}

/** As loud as every other clip at its loudest, 0…1. */
export function peakAt({ rate, samples }: Wave, peak: number): Wave {
  let highest = 1;
  for (const sample of samples) highest = Math.max(highest, Math.abs(sample));
  return { rate, samples: samples.map((s) => Math.round((s / highest) * peak * 32_767)) };
}
