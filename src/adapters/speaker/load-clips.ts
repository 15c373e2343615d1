import type { ClipIndex } from '../../core/speech/clip-index.ts';
import { recordedOf } from '../../core/speech/recorded.ts';
import type { Clips } from './open-clips.ts';
import type { Recordings } from './recordings.ts';

/** One clip as it is played, and how long it speaks, s: an encoder adds silence of its own. */
export interface Loaded {
  readonly buffer: AudioBuffer;
  readonly seconds: number;
  /** It was recorded here. */
  readonly anew: boolean;
}

const NUMBERS = 'numbers.mp3';

/** The clips of one utterance: as they were recorded here where they were, else as they came. */
export async function loadClips(
  context: BaseAudioContext,
  ids: readonly string[],
  index: ClipIndex,
  clips: Clips,
  recordings: Recordings,
): Promise<readonly Loaded[]> {
  const recorded = await recordings.recorded();
  const mine = recordedOf(
    ids,
    (id) => recorded.has(id),
    (id) => index.get(id)?.file === NUMBERS,
  );
  const recording = async (id: string): Promise<Loaded | null> => {
    try {
      const wave = mine.has(id) ? await recordings.wave(id) : null;
      const buffer = wave && (await context.decodeAudioData(wave));
      return buffer && { buffer, seconds: buffer.duration, anew: true };
    } catch {
      return null; // damaged: the clip that came with the program says the same
    }
  };
  const shipped = async (id: string): Promise<Loaded> => ({
    buffer: await context.decodeAudioData(await clips.clip(id)),
    seconds: index.get(id)?.seconds ?? 0,
    anew: false,
  });
  return Promise.all(ids.map(async (id) => (await recording(id)) ?? shipped(id)));
}
