import type { Settings, Studio } from '../../../machines/ports.ts';
import { browserRecorder } from './browser-recorder.ts';
import { openClips, type Clips } from './open-clips.ts';
import { recordTake, type RecorderParts } from './recorder.ts';
import { recordingsIn } from './recordings.ts';

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
      const { over, stop, cancel } = recordTake(parts, onHeard);
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
