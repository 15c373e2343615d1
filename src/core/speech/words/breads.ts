import { inTongue } from '../tongue.ts';

/**
 * Breads that come with the program, by their formulas' ids, as they are shown: show-bread.ts. In English
 * they are what the formulas have and everything keeps. No name says more than is in the bread: what may
 * be called wholemeal is a matter of law in places (from memory).
 */
export const breadNames = inTongue('breads', 'breadNames', {
  'cherry-hazelnut': 'Cherry and hazelnut',
  'lane-wheat': 'Lane wheat',
  'lane-today': 'Lane wheat, same day',
  'olive-seed': 'Olive and seed',
  'barley-tin': 'Barley tin',
  'harbour-rye': 'Harbour rye',
  'seed-oat': 'Seed and oat',
  wholemeal: 'Whole wheat',
  'cheese-seed': 'Cheese and seed',
} as const);
