import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { RATED_FROM, rateOf, wordsIn } from '../../../src/core/speech/pace.ts';
import { loudness, peakAt, readWave, tighten, trim, writeWave, type Wave } from './wave.ts';

const run = promisify(execFile);

/**
 * How fast is spoken, words a minute, and how much slower than by itself the voice goes for it: 140–160
 * for grown-ups (core/speech/pace), the edges kept off. Small hands hear the same clips, stretched.
 */
const RATE = { least: 142, most: 158, stretch: 1.12 } as const;

/** A few words have no rate of their own, and are no quicker than this. Judgement. */
export interface Calm {
  /** Words a minute, where there are several. */
  readonly wpm: number;
  /** Syllables a second. */
  readonly syllables: number;
}
export const CALM: Calm = { wpm: 190, syllables: 4.4 };
/** Parts of numbers are joined, and joints take their time anyway. */
export const BRISK: Calm = { wpm: Infinity, syllables: Infinity };

/** Above 1 where a few words are too quick. */
const haste = ({ wpm, syllables }: Calm, words: number, calm: Calm): number =>
  Math.max(words > 1 ? wpm / calm.wpm : 0, syllables / calm.syllables);

/** What the voice would say otherwise than bakers do. */
const RESPELT: readonly (readonly [RegExp, string])[] = [
  [/\blevain\b/gi, 'luh van'],
  [/\bpreshape\b/gi, 'pree shape'],
  [/\bread (?=through|it through)/gi, 'reed '],
  [/^am$/, 'ay em'],
  [/’/g, "'"],
];

/**
 * Speech over a kitchen: rumble out, consonants up, loud and soft brought together, all as loud as
 * each other at their loudest.
 */
const SHAPE =
  'highpass=f=150,equalizer=f=3000:t=q:w=1:g=8,treble=g=4,acompressor=threshold=0.1:ratio=4:attack=2:release=60';
const PEAK = 0.89;

/** One clip as it is played. */
export interface Rendered {
  readonly mp3: Buffer;
  /** How long it speaks, s. */
  readonly seconds: number;
  /** Words a minute over all of it. */
  readonly wpm: number;
  /** Root mean square, 0…1. */
  readonly rms: number;
}

const speltFor = (text: string): string =>
  RESPELT.reduce((said, [from, to]) => said.replace(from, to), text);

const speak = async (dir: string, text: string, stretch: number): Promise<Wave> => {
  const raw = join(dir, 'raw.wav');
  const setf = ['--setf', `duration_stretch=${stretch.toFixed(3)}`];
  await run('flite', ['-voice', 'slt', ...setf, '-t', speltFor(text), '-o', raw]);
  return tighten(trim(readWave(await readFile(raw))));
};

const secondsOf = ({ rate, samples }: Wave): number => samples.length / rate;

/** Spoken within the rate: slower or faster than the voice's own measure until it is. */
async function atRate(dir: string, text: string, calm: Calm): Promise<Wave> {
  const words = wordsIn(text);
  const isRated = words.length >= RATED_FROM;
  let stretch: number = isRated ? RATE.stretch : 1;
  let wave = await speak(dir, text, stretch);
  for (let tries = 0; tries < 4; tries += 1) {
    const rate = rateOf({ words, seconds: secondsOf(wave), pauses: 0 });
    const hasty = haste(rate, words.length, calm);
    if (isRated ? rate.wpm >= RATE.least && rate.wpm <= RATE.most : hasty <= 1) break;
    const wanted = Math.min(RATE.most - 2, Math.max(RATE.least + 2, rate.wpm));
    stretch *= isRated ? rate.wpm / wanted : hasty * 1.05;
    wave = await speak(dir, text, stretch);
  }
  return wave;
}

/**
 * A phrase spoken, shaped and packed: flite, ffmpeg and lame, as Debian brings them. A few words are no
 * quicker than `calm`.
 */
export async function render(text: string, calm: Calm): Promise<Rendered> {
  const dir = await mkdtemp(join(tmpdir(), 'voice-'));
  try {
    const [plain, shaped, mp3] = ['plain.wav', 'shaped.wav', 'clip.mp3'].map((f) => join(dir, f));
    await writeFile(plain!, writeWave(await atRate(dir, text, calm)));
    await run('ffmpeg', ['-loglevel', 'error', '-y', '-i', plain!, '-af', SHAPE, shaped!]);
    const wave = peakAt(readWave(await readFile(shaped!)), PEAK);
    await writeFile(shaped!, writeWave(wave));
    await run('lame', [
      '--quiet',
      '-m',
      'm',
      '--cbr',
      '-b',
      '32',
      '--resample',
      '16',
      shaped!,
      mp3!,
    ]);
    const seconds = secondsOf(wave);
    return {
      mp3: await readFile(mp3!),
      seconds,
      wpm: (wordsIn(text).length * 60) / seconds,
      rms: loudness(wave.samples),
    };
  } finally {
    await rm(dir, { recursive: true });
  }
}
