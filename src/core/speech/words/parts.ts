import { inTongue } from '../tongue.ts';

/**
 * Flours and fillings of the breads that come with the program, those that the Book's own lists do not
 * name, as they are shown: show-part.ts. In English they are what the formulas have and everything keeps.
 * None says more than the English does, and none is called as another is.
 */
export const partNames = inTongue('parts', 'partNames', {
  wholemealWheat: 'wholemeal wheat flour',
  cherry: 'dried cherries',
  pumpkin: 'toasted pumpkin seeds',
  sesame: 'toasted sesame',
  agedCheese: 'hard, aged cheese',
} as const);
