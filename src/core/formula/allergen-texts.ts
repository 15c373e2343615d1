/**
 * Allergens as formulas, circles and logs keep them, and as they are compared there: the same letters in
 * every tongue. No tongue touches them; what is shown of them is speech/show-allergen.ts.
 *
 * The fourteen of EU law (Regulation 1169/2011, Annex II), which hold the nine of US law (wheat among
 * the grains with gluten). From memory; local rules come first.
 */
export const ALLERGEN_TEXTS = {
  gluten: 'gluten',
  nuts: 'tree nuts',
  sesame: 'sesame',
  milk: 'milk',
  egg: 'egg',
  soya: 'soya',
  peanuts: 'peanuts',
  sulphites: 'sulphites',
  mustard: 'mustard',
  celery: 'celery',
  lupin: 'lupin',
  fish: 'fish',
  crustaceans: 'crustaceans',
  molluscs: 'molluscs',
} as const;

/** The grains and the nuts that such a label names one by one. From memory, of the same list. */
export const KIND_TEXTS = {
  gluten: ['wheat', 'rye', 'barley', 'oats', 'spelt wheat'],
  nuts: ['hazelnut', 'walnut', 'almond', 'cashew', 'pecan', 'pistachio', 'Brazil nut', 'macadamia'],
} as const;

/** What a grain brings, by its own word among the kinds. */
export const GLUTEN_OF = {
  wheat: 'wheat',
  wholeWheat: 'wheat',
  rye: 'rye',
  spelt: 'spelt wheat',
  barley: 'barley',
} as const;

/** What the short list of fillings knows of its own: more than of their kind. */
export const FILLING_TEXTS = {
  walnut: 'tree nuts (walnut)',
  hazelnut: 'tree nuts (hazelnut)',
} as const;
