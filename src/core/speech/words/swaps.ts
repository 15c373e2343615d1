import { inTongue } from '../tongue.ts';

/** One filling for another, on the Book's page of it. Shown, never said. */
export const bookSwaps = inTongue('swaps', 'bookSwaps', {
  press: 'Swap it',
  title: 'Swap the {name}',
  detail: 'Each press swaps it. More has an undo.',
  dried: 'Dried instead of fresh',
  fresh: 'Fresh instead of dried',
  other: '{name} instead',
  value: '{is} instead of {was}',
  alike: '{is}, as before',
  herbs:
    'Dried herbs weigh half of fresh: common practice, no source. Books go by volume: a third.',
  even: 'As much by weight: common practice, no source.',
} as const);

/** What else a swap changes. Where the old one's packet was never read there is nothing to set it against. */
export const swapChanges = inTongue('swaps', 'swapChanges', {
  salt: 'Salt in it: {is} instead of {was}.',
  saltIs: 'Salt in it: {is}.',
  water: 'Water in it: {is} instead of {was}.',
  waterIs: 'Water in it: {is}.',
  guess: 'From memory: go by its packet.',
  perishable: 'It spoils: cold until the final shape, in the oven within 2 hours.',
  hardCheese: 'Hard, aged, pasteurised cheese may stand; other cheese spoils.',
  shelf: 'It keeps on the shelf.',
  names: 'The label has to name: {allergens}.',
  drops: 'No longer in it: {allergens}.',
  same: 'Nothing else changes.',
} as const);

/** What herbs are called after a swap where their name did not say which they were: herb-name.ts. */
export const herbNames = inTongue('swaps', 'herbNames', {
  fresh: 'fresh {name}',
  dried: 'dried {name}',
} as const);
