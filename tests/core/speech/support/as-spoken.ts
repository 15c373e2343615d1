import { readFileSync } from 'node:fs';
import { readClipIndex } from '../../../../src/core/speech/clip-index.ts';
import { layClips, secondsOf, spokenBy } from '../../../../src/core/speech/clips.ts';
import { stretchFor, type Pace, type Spoken } from '../../../../src/core/speech/pace.ts';

/** The clips as they are committed. */
export const clipIndex = readClipIndex(
  JSON.parse(readFileSync('assets/voice/index.json', 'utf8')),
)!;

/** An utterance as the voice plays it at this pace; of `own` words it has no clips. */
export function asSpoken(
  utterance: string,
  pace: Pace,
  own: readonly string[] = [],
): { readonly spoken: Spoken; readonly seconds: number; readonly by: number } {
  const { clips } = layClips(utterance, (id) => clipIndex.has(id), own);
  const plain = (id: string): number => clipIndex.get(id)!.seconds;
  const by = stretchFor(spokenBy(clips, plain), pace);
  const seconds = (id: string): number => plain(id) * by;
  return { spoken: spokenBy(clips, seconds), seconds: secondsOf(clips, seconds), by };
}
