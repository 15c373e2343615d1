import type { Settings, Studio } from '../../../machines/ports.ts';
import { makeClip, waveOf } from '../../core/speech/recording.ts';
import { browserRecorder } from './browser-recorder.ts';
import { openClips, type Clips } from './open-clips.ts';
import { listen, type RecorderParts, type Wanted } from './recorder.ts';
import { recordingsIn } from './recordings.ts';

/** Nothing that is said takes longer, ms. */
const MOST = 15_000;

/** A clip as the others are: without the silence around it, and as loud. */
export const clipOf = ({ decode }: Pick<RecorderParts, 'decode'>): Wanted<ArrayBuffer> => ({
  most: MOST,
  async made(file) {
    const clip = makeClip(await decode(file));
    return clip === null ? 'silent' : waveOf(clip);
  },
});

/** Where clips are spoken anew; rejects where the list of clips cannot be had. */
export async function openStudio(
  settings: Settings,
  later: RecorderParts['later'],
  parts: RecorderParts = browserRecorder(later),
  clips: Clips = openClips(),
): Promise<Studio> {
  const recordings = recordingsIn(settings);
  return {
    clips: [...(await clips.index())].map(([id, { file }]) => ({ id, file })),
    recorded: recordings.recorded,
    record(id, onHeard) {
      const { over, stop, cancel } = listen(parts, clipOf(parts), onHeard);
      const held = over.then((taken) => {
        if (typeof taken === 'string') return taken;
        recordings.hold(id, taken);
        return null;
      });
      return { over: held, stop, cancel };
    },
    keep: recordings.keep,
    drop: recordings.drop,
  };
}
