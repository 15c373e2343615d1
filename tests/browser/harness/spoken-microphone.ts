import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestContext } from 'vitest';
import { writeWave } from '../../../assets/make/voice/wave.ts';
import { HEARD_AT } from '../../../src/core/ear/heard-at.ts';
import { hasVoices, VOICES } from '../../../src/serve/prepare/find-voices.mjs';
import { NEEDS } from '../../reporter.ts';

/** A microphone before which a sound is heard once, from each time that it is opened. */
export interface SpokenMicrophone {
  /** What Chromium is to be started with. */
  readonly flags: readonly string[];
  /** What is heard the next time it is opened. */
  put(sound: Float32Array): Promise<void>;
  readonly close: () => Promise<void>;
}

export async function makeSpokenMicrophone(): Promise<SpokenMicrophone> {
  const dir = await mkdtemp(join(tmpdir(), 'loafward-spoken-'));
  const file = join(dir, 'spoken.wav');
  const put = (sound: Float32Array): Promise<void> => {
    const samples = Int16Array.from(sound, (s) => Math.max(-1, Math.min(1, s)) * 32_767);
    return writeFile(file, writeWave({ rate: HEARD_AT, samples }));
  };
  await put(new Float32Array(HEARD_AT));
  return {
    put,
    flags: [
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}%noloop`,
    ],
    close: () => rm(dir, { recursive: true }),
  };
}

/** Leaves a test out, and has it counted as not run, where this machine has no voice to speak with. */
export const needVoice = ({ skip }: TestContext): void =>
  skip(!hasVoices(), `${NEEDS}${VOICES.join(' and ')}`);
