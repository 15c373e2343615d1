import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { loudness, peakAt, readWave, trim, writeWave, type Wave } from './wave.ts';

const run = promisify(execFile);

/**
 * How fast is spoken, words a minute, and how much slower than by itself the voice goes for it; `few`
 * where it says a few words alone, which it draws out anyway.
 */
export interface Rate {
  readonly least: number;
  readonly most: number;
  readonly stretch: number;
  readonly few: number;
}

/** 140–160 for grown-ups, 115–130 for small hands (Berry and Erickson 1973); the edges are kept off. */
export const RATES = {
  grown: { least: 142, most: 158, stretch: 1.12, few: 1 },
  small: { least: 117, most: 128, stretch: 1.38, few: 1.2 },
} as const satisfies Readonly<Record<string, Rate>>;

/** Fewer words than this have no rate of their own: one long word is a slow minute. Judgement. */
export const RATED_FROM = 4;

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

/** Words as they are counted for a rate: 'twenty-five' is two. */
export const wordsIn = (text: string): number =>
  text.split(/[\s-]+/).filter((word) => /[a-z0-9]/i.test(word)).length;

const speltFor = (text: string): string =>
  RESPELT.reduce((said, [from, to]) => said.replace(from, to), text);

const speak = async (dir: string, text: string, stretch: number): Promise<Wave> => {
  const raw = join(dir, 'raw.wav');
  const setf = ['--setf', `duration_stretch=${stretch.toFixed(3)}`];
  await run('flite', ['-voice', 'slt', ...setf, '-t', speltFor(text), '-o', raw]);
  return trim(readWave(await readFile(raw)));
};

const secondsOf = ({ rate, samples }: Wave): number => samples.length / rate;

/** Spoken within the rate: slower or faster than the voice's own measure until it is. */
async function atRate(dir: string, text: string, rate: Rate): Promise<Wave> {
  const words = wordsIn(text);
  let stretch = words < RATED_FROM ? rate.few : rate.stretch;
  let wave = await speak(dir, text, stretch);
  for (let tries = 0; words >= RATED_FROM && tries < 4; tries += 1) {
    const wpm = (words * 60) / secondsOf(wave);
    if (wpm >= rate.least && wpm <= rate.most) break;
    const wanted = Math.min(rate.most - 2, Math.max(rate.least + 2, wpm));
    stretch *= wpm / wanted;
    wave = await speak(dir, text, stretch);
  }
  return wave;
}

/** A phrase spoken, shaped and packed: flite, ffmpeg and lame, as Debian brings them. */
export async function render(text: string, rate: Rate): Promise<Rendered> {
  const dir = await mkdtemp(join(tmpdir(), 'voice-'));
  try {
    const [plain, shaped, mp3] = ['plain.wav', 'shaped.wav', 'clip.mp3'].map((f) => join(dir, f));
    await writeFile(plain!, writeWave(await atRate(dir, text, rate)));
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
      wpm: (wordsIn(text) * 60) / seconds,
      rms: loudness(wave.samples),
    };
  } finally {
    await rm(dir, { recursive: true });
  }
}
