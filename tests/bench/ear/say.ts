import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { readWave } from '../../../assets/make/voice/wave.ts';
import type { Voice } from './voices.ts';

/** Samples a second of all that is heard. */
export const HEARD_AT = 16_000;

/** One way to say it: `haste` and `pitch` are shares of the voice's own. */
export interface Take {
  readonly haste: number;
  readonly pitch: number;
}

const run = promisify(execFile);

/** Other samples a second: lowpassed by a windowed sinc, so that nothing folds. */
export function resampled(sound: Float32Array, by: number): Float32Array {
  const made = new Float32Array(Math.floor(sound.length / by));
  const cut = Math.min(1, 1 / by);
  const reach = Math.ceil(12 / cut);
  for (let i = 0; i < made.length; i += 1) {
    const at = i * by;
    const first = Math.max(0, Math.ceil(at - reach));
    const last = Math.min(sound.length - 1, Math.floor(at + reach));
    let sum = 0;
    for (let n = first; n <= last; n += 1) {
      const x = at - n;
      const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / reach);
      const wave = x === 0 ? cut : Math.sin(Math.PI * cut * x) / (Math.PI * x);
      sum += sound[n]! * wave * window;
    }
    made[i] = sum;
  }
  return made;
}

/** A text as a voice says it, HEARD_AT samples a second, with the silence that its tool leaves about it. */
export async function say(text: string, voice: Voice, take: Take): Promise<Float32Array> {
  const folder = await mkdtemp(join(tmpdir(), 'loafward-said-'));
  const file = join(folder, 'said.wav');
  try {
    // A smaller throat is played faster: said slower before, it comes out as it was meant.
    const haste = take.haste / voice.throat;
    if (voice.by.tool === 'espeak-ng') {
      const pitch = Math.max(0, Math.min(99, Math.round(voice.by.pitch * take.pitch)));
      const words = Math.round(165 * haste);
      await run('espeak-ng', [
        '-v',
        voice.by.voice,
        '-p',
        `${pitch}`,
        '-s',
        `${words}`,
        '-w',
        file,
        text,
      ]);
    } else {
      const sets = ['--setf', `duration_stretch=${1 / haste}`];
      if (voice.by.voice !== 'awb') sets.push('--setf', `int_f0_target_mean=${110 * take.pitch}`);
      await run('flite', ['-voice', voice.by.voice, ...sets, '-t', text, '-o', file]);
    }
    const { rate, samples } = readWave(await readFile(file));
    return resampled(
      Float32Array.from(samples, (s) => s / 32_768),
      (rate / HEARD_AT) * voice.throat,
    );
  } finally {
    await rm(folder, { recursive: true });
  }
}
