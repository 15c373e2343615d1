import { inTongue } from '../tongue.ts';
import { ALLERGENS, RAW_DOUGH } from './care.ts';
import type { StageWords } from '../words.ts';

/** Where the filling puts the dough's hour off by five minutes or more. */
const fillingSlows = 'Cold filling slows it: about {minutes} more.';

/** Of a filling’s line too, as it is weighed. */
export const SCATTER = {
  detail: 'Dry and cool. Leave a 3 cm bare edge.',
  slab: 'It’s scattered',
  then: 'then roll it up',
} as const;

export const bulk = inTongue('bulk', 'bulk', {
  'bulk.between': {
    headline: 'Leave the dough to rise',
    detail: 'Hands in again at {time}. Keep it covered.',
    slab: 'Start it now',
    then: 'hands in, {touch} of {touches}',
    spoken: '{time} is when your hands go in. Keep the dough covered.',
  },
  'bulk.fold': {
    headline: 'Fold the dough, {touch} of {touches}',
    detail: 'Lift, stretch, fold and turn, four times. Stop if it tears.',
    slab: 'It’s folded',
    then: 'then it rises again',
    spoken: '{touch} of {touches}. Lift, stretch, fold and turn, four times.',
    care: RAW_DOUGH,
  },
  'bulk.spread': {
    headline: 'Spread the dough thin',
    detail: 'On a wet bench. Stop where it resists.',
    slab: 'It’s spread',
    then: 'then scatter the filling',
    spoken: 'Spread the dough thin on a wet bench. Stop where it resists.',
    care: RAW_DOUGH,
  },
  'bulk.scatter': {
    headline: 'Scatter the filling',
    ...SCATTER,
    spoken: 'Three centimetres stay bare at the edge. Scatter the filling.',
    care: `Fresh cheese, meat, cooked food, garlic in oil: never here, they spoil. ${ALLERGENS}`,
  },
  'bulk.roll': {
    headline: 'Roll the dough up',
    detail: 'Fold it in thirds, then roll. Back in the bowl, seam down.',
    slab: 'It’s rolled',
    then: 'then it rises again',
    spoken: 'Roll the dough up. Back in the bowl, seam down.',
    care: RAW_DOUGH,
  },
  'bulk.proving': {
    headline: 'Leave the dough to rise',
    detail: 'Next look at {time}. Keep it covered.',
    slab: 'Look now',
    then: 'and say what you see',
    spoken: '{time} is the next look. Leave the dough to rise.',
  },
  'bulk.look': {
    headline: 'Look at the dough',
    detail: 'Say what you see. “Not sure” is an answer.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'Look at the dough. Say what you see.',
  },
} satisfies Record<string, StageWords>);

/** Of these, what is said by itself. */
export const bulkLines = inTongue('bulk', 'bulkLines', {
  fillingSlows,
});
