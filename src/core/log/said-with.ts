import { oneLine } from '../circle/name.ts';
import type { Instant } from '../units.ts';
import { NOTHING_SAID, type About } from './about.ts';
import { KEEPSAKE_LIMITS } from './keepsake-limits.ts';
import { isTag } from './tags.ts';

/** More than this is not looked at: somebody may paste a book. */
const LOOKED_AT = 20_000;

/**
 * A note as it is kept: what cannot be seen is left out but the ends of lines, and no more of it than there
 * is room for.
 *
 * @example
 * cleanNote('  Sour,\r\n but good ') // → 'Sour,\n but good'
 */
export const cleanNote = (text: string): string => {
  const lines = text.slice(0, LOOKED_AT).replace(/\r\n?/g, '\n');
  const seen = lines.replace(/[^\P{C}\n]/gu, '').trim();
  return [...seen].slice(0, KEEPSAKE_LIMITS.noteLetters).join('').trim();
};

/**
 * A tag in the baker's own words as it is kept; '' where there is nothing to see.
 *
 * @example
 * cleanTag(' for  the mill ') // → 'for the mill'
 */
export const cleanTag = (text: string): string => oneLine(text, KEEPSAKE_LIMITS.tagLetters);

const each = (list: readonly string[], most: number): readonly string[] =>
  [...new Set(list)].filter((one) => one !== '').slice(0, most);

/** What is said of a bake after a change, as it can be read back. `said` null: nothing was said of it yet. */
export function saidWith(
  said: About | null,
  change: Partial<Omit<About, 'at'>>,
  at: Instant,
): About {
  const next = { ...NOTHING_SAID, ...said, ...change };
  return {
    tags: each(next.tags.map(cleanTag), KEEPSAKE_LIMITS.tags),
    hidden: next.hidden,
    note: cleanNote(next.note),
    ate: each(next.ate, KEEPSAKE_LIMITS.ate),
    home: next.home,
    at,
  };
}

/**
 * What stays of it once all that names anybody is erased: whether it is hidden, and tags out of the
 * catalogue. A baker's own words may be a name.
 */
export const erasedSaid = (said: About | null, at: Instant): About =>
  saidWith(said, { note: '', ate: [], home: false, tags: said?.tags.filter(isTag) ?? [] }, at);
