import { inTongue } from '../tongue.ts';

/** What a formula is made of: flours, fillings and stages of water, added, named and taken out. */
export const bookParts = inTongue('book-parts', 'bookParts', {
  addFlour: 'Add a flour',
  addWater: 'Add second water',
  begins: 'It takes a tenth; the others share the rest.',
  full: 'Eight flours at most.',
  small: 'Another flour’s share is too small to make room.',
  byName: 'Another one',
  nameAsk: 'What is it called?',
  grainAsk: 'Which grain is it from?',
  /** Beside a flour's number. */
  sharing: '{value}. Others adapt.',
  about: 'About it',
  name: 'Its name',
  grain: 'Its grain',
  counted: 'Percent of what?',
  countedAsk: 'What are fillings a percent of?',
  countedDetail: 'Goes for all fillings of this bread. Their weights stay.',
  ofFlour: 'Of the flour',
  ofFlourMeans: 'like all other lines',
  ofDough: 'Of the dough',
  ofDoughMeans: 'before they go in',
  ofDoughValue: '{percent} % of dough · {grams}',
  soak: 'Water to soak in',
  soakNone: 'none',
  soakAsk: 'Water to soak in, %',
  soakNow: '{value}. Percent of its dry weight.',
  soakCare: 'Soak it in the fridge if it takes over 2 hours.',
} as const);

/** Flours to add from. Names as a baker says them. */
export const flourNames = inTongue('book-parts', 'flourNames', {
  strongWheat: 'strong wheat flour',
  plainWheat: 'plain wheat flour',
  wholeWheat: 'whole wheat flour',
  wholeRye: 'whole rye flour',
  lightRye: 'light rye flour',
  spelt: 'spelt flour',
  wholeSpelt: 'whole spelt flour',
  barley: 'barley flour',
} as const);
