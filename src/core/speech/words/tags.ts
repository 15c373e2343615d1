import { inTongue } from '../tongue.ts';
import type { Tag } from '../../log/tags.ts';

/** The tags of the catalogue as they are read; a baker's own are read as they were typed. */
export const tagWords: Readonly<Record<Tag, string>> = inTongue('tags', 'tagWords', {
  best: 'Best so far',
  gift: 'A gift',
  new: 'First try',
  guests: 'Guests',
  children: 'With children',
  market: 'Market',
  weekday: 'Weekday',
  feast: 'Feast day',
  test: 'Test bake',
  rescued: 'Rescued',
});
