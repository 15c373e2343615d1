import { inTongue } from '../tongue.ts';

/**
 * The water of a mix or a feed: how warm, of how much ice, and why. {celsius} is what it is to be or
 * what the dough comes to; every value brings its unit.
 */
export const water = inTongue('water', 'water', {
  dough: 'for dough at {celsius}',
  levain: 'for levain at {celsius}',
  range: 'or {range}',
  /** Its line among the others of a card, so that it can be made ready. */
  line: '{line}, {celsius}',
  /** After the weight that is called: "600 grams of water, at 31 degrees." */
  spoken: '{line}, at {celsius}.',
  moved: 'The water is now {celsius}.',
  ice: '{grams} of it as ice. The rest is from the cold tap.',
  /** Hotter than hands and culture bear. */
  hot: 'No hotter: it starts at {celsius} and takes longer.',
  warmer: 'Your last doughs came out {got} warmer: cooler water.',
  cooler: 'Your last doughs came out {got} cooler: warmer water.',
  guess: {
    both: 'A guess: flour and levain as warm as the kitchen.',
    flour: 'A guess: flour as warm as the kitchen.',
    levain: 'A guess: levain as warm as the kitchen.',
    tap: 'A guess: the cold tap at {celsius}.',
    seed: 'A guess: starter at {celsius}, from the fridge.',
  },
} as const);

/** After the dough was measured: what it teaches the next bake. */
export const mixTaught = inTongue('water', 'mixTaught', {
  right: 'The dough came out as reckoned.',
  warmer: '{got} warmer than reckoned: the next water will be cooler.',
  cooler: '{got} cooler than reckoned: the next water will be warmer.',
} as const);

/** The page behind "Why this?". */
export const whyWater = inTongue('water', 'whyWater', {
  title: 'Why water at {celsius}?',
  dough: 'Wanted in the dough',
  levain: 'Wanted in the jar',
  flour: 'Flour',
  levainNow: 'Levain',
  seed: 'Starter',
  kitchen: 'Kitchen',
  tap: 'Cold tap',
  read: '{celsius}, measured',
  told: '{celsius}, as you told me',
  guessed: '{celsius}, a guess',
  ofFormula: '{celsius}, by the formula',
  usual: '{celsius}, as is usual',
  change: 'Change the wanted {celsius}',
  wetting: 'Wet flour warms itself, nobody knows how much: {range}.',
  one: 'Your last dough came out {got}. The water makes up for half.',
  some: 'Your last {count} doughs came out {got}. The water makes up for most.',
  known: 'Your last {count} doughs came out {got}. The water makes up for it.',
  as: { warmer: '{got} warmer than reckoned', cooler: '{got} cooler than reckoned' },
  asReckoned: 'as reckoned',
  rule: 'The rule of thumb says {celsius}. It counts a little levain like a kilo of flour: a second opinion.',
  most: 'Never above {celsius}: it would harm hands and levain.',
  second: 'A little water hardly changes a big dough.',
  measure: 'Measure the dough all the same.',
} as const);
