import type { Studio } from '../../../machines/ports.ts';
import { record } from '../../core/speech/words/record.ts';

/** Clips on one page: with two presses to turn it, six at most. */
const ON_PAGE = 4;
/** As many words of a clip as a small press shows. */
const WORDS = 6;

export type Clip = Studio['clips'][number];
export const STAGES = Object.keys(record.stages) as readonly (keyof typeof record.stages)[];
export type StageOfClips = (typeof STAGES)[number];

/** The clips of one stage, as they are read out. */
export const clipsOf = (clips: readonly Clip[], stage: StageOfClips): readonly Clip[] =>
  clips.filter(({ file }) => file === `${stage}.mp3`);

/** Pages of a list, each a few clips. */
export const pagesOf = (clips: readonly Clip[]): readonly (readonly Clip[])[] =>
  Array.from({ length: Math.ceil(clips.length / ON_PAGE) }, (_, i) =>
    clips.slice(i * ON_PAGE, (i + 1) * ON_PAGE),
  );

/** The words of a clip as a sentence begins. */
export const wordsOf = ({ id }: Clip): string => id.charAt(0).toUpperCase() + id.slice(1);

/** The first of them, where there are many. */
export function shortWords(clip: Clip): string {
  const words = wordsOf(clip).split(' ');
  return words.length > WORDS ? `${words.slice(0, WORDS).join(' ')}…` : words.join(' ');
}

/** The first that nobody has spoken anew, from the place `from` on and then from the top; null: none is left. */
export function nextToRecord(
  clips: readonly Clip[],
  recorded: ReadonlySet<string>,
  from = 0,
): Clip | null {
  const left = ({ id }: Clip): boolean => !recorded.has(id);
  return clips.slice(from).find(left) ?? clips.find(left) ?? null;
}
