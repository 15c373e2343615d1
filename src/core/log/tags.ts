/** Tags that a bake may have beside its baker's own words; each has its words in `speech/en/keepsakes.ts`. */
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
