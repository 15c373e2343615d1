import { inTongue } from '../tongue.ts';

/** What a formula is made of: flours, fillings and stages of water, added, named and taken out. */
export const bookParts = inTongue('book-parts', 'bookParts', {
  addFlour: 'Add a flour',
  addWater: 'Add second water',
  begins: 'It takes a tenth; the others share the rest.',
  full: 'Eight flours are the most.',
  small: 'Another flour here has too small a share to give way.',
  byName: 'By another name',
  nameAsk: 'What is it called?',
  grainAsk: 'Which grain is it of?',
  /** Beside a flour's number. */
  sharing: '{value}. Others adapt.',
  about: 'About it',
  name: 'Its name',
  grain: 'Its grain',
  counted: 'Counted',
  countedAsk: 'What is a filling counted of?',
  countedDetail: 'All fillings of this bread are. Their weights stay.',
  ofFlour: 'Of the flour',
  ofFlourMeans: 'as all other lines are',
  ofDough: 'Of the dough',
  ofDoughMeans: 'as it is before they go in',
  ofDoughValue: '{percent} % of dough · {grams}',
  soak: 'Water to soak in',
  soakNone: 'none',
  soakAsk: 'Water to soak in, %',
  soakNow: '{value}. Counted on its dry weight.',
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
