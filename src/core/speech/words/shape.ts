import { inTongue } from '../tongue.ts';
import { RAW_DOUGH } from './care.ts';
import type { StageWords } from '../words.ts';

const SHAPE = {
  'shape.divide': {
    headline: 'Divide into {grams} pieces',
    detail: '{loaves}. Weigh each piece, scraps in the middle.',
    slab: 'All divided',
    then: 'then round them',
    spoken: '{loaves}, {grams} each. Weigh every piece.',
    care: RAW_DOUGH,
  },
  'shape.preshape': {
    headline: 'Round each piece loosely',
    detail: 'Little flour, smooth side up. Keep them in order.',
    slab: 'All rounded',
    then: 'then they rest',
    spoken: 'Round each piece loosely. Smooth side up.',
    care: RAW_DOUGH,
  },
  'shape.benchRest': {
    headline: 'Let the pieces rest',
    detail: 'Cover them and wipe the bench. Shape at {time}.',
    slab: 'Shape now',
    then: 'the first piece first',
    spoken: '{time} is when you shape. Cover the pieces.',
  },
  'shape.finalShape': {
    headline: 'Shape each loaf',
    detail: 'Flour, turn, fold, roll up tight. Pinch the seam.',
    slab: 'All shaped',
    then: 'then into the baskets',
    spoken: 'Shape each loaf. Roll it up tight and pinch the seam.',
    care: RAW_DOUGH,
  },
  'shape.basket': {
    headline: 'Lay each loaf in its basket',
    detail: 'Flour the basket well. Seam up, then cover.',
    slab: 'In baskets',
    then: 'then they rise once more',
    spoken: 'Lay each loaf in its basket. Seam up, then cover.',
    care: RAW_DOUGH,
  },
  'shape.scoop': {
    headline: 'Put the dough in the tins',
    detail: '{grams} in each greased tin. Wet hands, smooth top.',
    slab: 'In the tins',
    then: 'then it rises once more',
    spoken: '{grams} in each greased tin. Wet hands.',
    care: RAW_DOUGH,
  },
} satisfies Record<string, StageWords>;

export const shape = inTongue('shape', 'shape', SHAPE);

/** Shown where the filling goes in as loaves are shaped, or into the bowl just before it is spooned. */
export const filledWords = inTongue('shape', 'filledWords', {
  'shape.finalShape': 'This much filling on each. Roll up tight, pinch the seam.',
  'shape.scoop': 'Stir the filling in, then {grams} in each greased tin.',
} as const);

const basket = SHAPE['shape.basket'];

/** Baskets that go cold: after their time on the counter, or at once. */
export const basketWords = inTongue('shape', 'basketWords', {
  counter: {
    ...basket,
    detail: 'Seam up, then cover. They stand {minutes}, then the fridge.',
    then: '{minutes} out, then the fridge',
    spoken: '{minutes} on the counter, then the fridge. Seam up, then cover.',
  },
  fridge: {
    ...basket,
    detail: 'Seam up, then cover. Then straight into the fridge.',
    then: 'then straight into the fridge',
    spoken: 'Lay each loaf in its basket. Then straight into the fridge.',
  },
} satisfies Record<string, StageWords>);
