import { inTongue } from '../tongue.ts';
import { MITTS, RATING, RING, STEAM } from './care.ts';

/** The steps of a formula, and what opens out of them. */
export const bookSteps = inTongue('steps', 'bookSteps', {
  title: 'Its steps',
  ask: '{part}, minutes',
  rise: 'Rise before dividing',
  riseAsk: 'Rise before dividing, %',
  dough: 'Dough after the mix',
  doughAsk: 'How warm is the mixed dough?',
  fridge: 'Fridge',
  fridgeAsk: 'How cold is the fridge?',
  usual: 'Usual: {least} to {most} {unit}',
  usualHeat: 'Usual: {least} to {most}',
  touch: { fold: 'Wait for fold {n}', laminate: 'Wait for the sheet' },
  touchAsk: { fold: 'Minutes to fold {n}', laminate: 'Minutes to the sheet' },
  takeOut: 'Take it out',
} as const);

/** Folds of the dough, and the sheet that takes a filling in. */
export const bookFolds = inTongue('steps', 'bookFolds', {
  title: 'Folds',
  detail: 'Each wait counts from what was before it.',
  noneDetail: 'The dough rises untouched.',
  more: 'One fold more',
  fewer: 'One fold less',
  none: 'none',
  sheet: 'a sheet',
  count: '{n}',
  both: '{n} and a sheet',
} as const);

/** What a step may be, each with what it means; under the question it answers. */
export const stepChoices = inTongue('steps', 'stepChoices', {
  fillingIn: {
    title: 'The filling goes in',
    sheet: 'On a sheet',
    sheetMeans: 'spread, scatter, roll up: between the folds',
    shape: 'At the shaping',
    shapeMeans: 'rolled into each loaf at its final shape',
    none: 'no filling',
  },
  shaping: {
    title: 'Shaping',
    round: 'By hand',
    roundMeans: 'divide, round, rest, shape',
    scoop: 'Spooned',
    scoopMeans: 'much rye, too soft to shape',
  },
  proof: {
    title: 'Last rise',
    cold: 'In the fridge',
    coldMeans: 'slow, baked another day',
    warm: 'Warm',
    warmMeans: 'the same day, under your eye',
  },
  vessel: {
    title: 'Baked in',
    pot: 'Pot with lid',
    stone: 'Hot stone',
    tin: 'Tin',
    /** What its oven is turned to: while it heats, and while it bakes. */
    heats: 'oven at {got}, then {range}',
  },
} as const);

/** The usual caution of what a loaf bakes in. */
export const vesselCare = inTongue('steps', 'vesselCare', {
  pot: `${MITTS} ${RATING} ${RING}`,
  stone: `${STEAM} Much parchment takes only {parchmentHeat}. ${RING}`,
  tin: `${MITTS} ${RING}`,
} as const);
const coldInPot = 'Cold dough only into bare iron, or ask its maker.';

/** Of these, what is said by itself. */
export const stepsLines = inTongue('steps', 'stepsLines', {
  coldInPot,
});
