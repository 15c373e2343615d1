import type { LastNote } from '../log/last-note.ts';
import {
  lastTimeLooked,
  lastTimeNoted,
  ownLastTime,
  theSameWay,
  thisTime,
} from './en/last-time.ts';
import { fill } from './fill.ts';

type Worded = Exclude<LastNote, { readonly from: 'own' }>;

/** What to do about it, as a sentence. */
export const tellChange = ({ change }: Worded): string =>
  change === null ? theSameWay : thisTime[change];

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
  note.from === 'own' ? fill(ownLastTime, { words: note.words }) : (sayLastTime(note) ?? '');
