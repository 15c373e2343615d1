import { inTongue } from '../tongue.ts';
import type { Join } from '../../records/stage.ts';

/** The page a bake begins on. */
export const start = inTongue('start', 'start', {
  title: 'Start a bake',
  formula: 'Which bread?',
  loaves: 'How many loaves?',
  piece: 'Dough for each loaf, {unit}',
  kitchen: 'How warm is the kitchen?',
  kitchenUnknown: 'I don’t know',
  kitchenLast: 'Last time: {celsius}',
  where: 'Where is your dough?',
  whereDetail: 'You can join at any step.',
  slab: 'Start baking',
  then: 'you can take it back',
  checkFirst: 'a sound check comes first',
  rehearse: 'Try it first',
  fewer: 'One less',
  more: 'One more',
  noFormulas: 'No formula here yet.',
  planDay: 'Plan a day',
  toLog: 'Log',
  cutWaits: 'cut loaf?',
  toKitchen: 'Kitchen',
  toBook: 'Book of formulas',
  toCircle: 'Bread circle',
  running: 'Baking now',
} as const);

/** How heavy each loaf is to be once it is baked. */
export const bread = inTongue('start', 'bread', {
  label: 'Each loaf, baked',
  about: 'about {grams}',
  usual: 'As in the recipe',
  ask: 'How heavy is a baked loaf?',
  // One line in bigger words, or the last row of keys goes out of sight.
  loses: 'Baking takes about {percent} % off',
  learned: 'Your oven takes {percent} % off',
  dough: '{grams} of dough each',
  /** Beside how many. */
  of: '{count} of {grams}',
} as const);

export const joins: Readonly<Record<Join, string>> = inTongue('start', 'joins', {
  'levain.feed': 'Feed now',
  'levain.ripe': 'My levain is ripe',
  'mix.weigh': 'Weighing comes next',
  'bulk.proving': 'My dough is in the bowl',
  'shape.divide': 'My dough is ready to divide',
  'shape.scoop': 'My dough goes in the tin now',
  'proof.retard': 'My loaves are in the fridge',
  'proof.warm': 'My loaves rise warm',
  'oven.queued': 'My loaves are ready to bake',
});

/** The read-through before a bake. */
export const readThrough = inTongue('start', 'readThrough', {
  title: '{name}, {loaves}',
  needs: 'You need',
  line: '{grams} {name}',
  filling: 'Filling: {grams} {name}',
  handsOn: 'Your hands: {minutes} in all',
  ends: 'Loaves out of the oven by {time}',
  overnight: 'It stays in the fridge overnight.',
  load: 'One load in the oven',
  loads: '{loads} loads in the oven',
  keepBack: 'Keep {keepBack} of starter back',
  unusual: 'Unusual, but allowed:',
} as const);
