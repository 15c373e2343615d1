import type { LastNote } from '../log/last-note.ts';
import { lastTimeLooked, lastTimeNoted, thisTime, lastTimeLines } from './words/last-time.ts';
import { fill } from './fill.ts';

type Worded = Exclude<LastNote, { readonly from: 'own' }>;

/** What to do about it, as a sentence. */
export const tellChange = ({ change }: Worded): string =>
  change === null ? lastTimeLines.theSameWay : thisTime[change];

/**
 * What it was last time and what to do this time, to be said; null where only the baker's own words are
 * there: nobody knows how they sound.
 *
 * @example
 * sayLastTime({ from: 'note', was: 'good', change: null }) // → 'Last time it was good. Do it the same way.'
 */
export const sayLastTime = (note: LastNote): string | null => {
  if (note.from === 'own') return null;
  const was = note.from === 'cut' ? lastTimeLooked[note.was] : lastTimeNoted[note.was];
  return `${was} ${tellChange(note)}`;
};

/** The same to be read, the baker's own words as they are. */
export const showLastTime = (note: LastNote): string =>
  note.from === 'own'
    ? fill(lastTimeLines.ownLastTime, { words: note.words })
    : (sayLastTime(note) ?? '');

/** As many first words as have so many letters, with an ellipsis for the others. */
function firstWords(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 0)) || cut.slice(0, -1)}…`;
}

/**
 * The same in so many letters where it can be: what to do this time alone, or the first of the baker's own
 * words.
 *
 * @example
 * glanceLastTime({ from: 'note', was: 'dark', change: 'coolerOven' }, 50) // → 'This time set the oven a little lower.'
 */
export function glanceLastTime(note: LastNote, most: number): string {
  const whole = showLastTime(note);
  if (whole.length <= most) return whole;
  if (note.from !== 'own') return tellChange(note);
  const room = most - fill(lastTimeLines.ownLastTime, { words: '' }).length;
  return fill(lastTimeLines.ownLastTime, { words: firstWords(note.words, room) });
}
