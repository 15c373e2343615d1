import { tagWords } from '../speech/words/tags.ts';

/** Tags that a bake may have beside its baker's own words; each has its words in `speech/words/tags.ts`. */
export const TAGS = [
  'best',
  'gift',
  'new',
  'guests',
  'children',
  'market',
  'weekday',
  'feast',
  'test',
  'rescued',
] as const;
export type Tag = (typeof TAGS)[number];

/**
 * Whether a tag is one of the catalogue.
 *
 * @example
 * isTag('for the mill') // → false
 */
export const isTag = (tag: string): tag is Tag => TAGS.some((one) => one === tag);

/**
 * A tag as it is read: the catalogue's words, or the baker's own.
 *
 * @example
 * tagName('gift') // → 'A gift'
 * tagName('for the mill') // → 'for the mill'
 */
export const tagName = (tag: string): string => (isTag(tag) ? tagWords[tag] : tag);
