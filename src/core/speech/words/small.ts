import type { Ages } from '../../small/ages.ts';
import type { HandMark } from '../../small/marks.ts';
import { inTongue } from '../tongue.ts';

/** Words around a child's view of a bake; what each step tells a child is in `small-4-6` and its like. */
export const small = inTongue('small', 'small', {
  title: 'Small hands',
  /** The way back, always in sight. */
  back: 'Baker’s view',
  /** Over what the grown-up does. */
  baker: 'The baker',
  /** Over the child's own task. */
  you: 'You',
  /** Under the slab's word. */
  palm: 'use your whole hand',
  /** The same where a grown-up holds it. */
  held: 'A grown-up holds this',
  /** Once a bake, at the first raw step. */
  raw: 'Raw dough can make us ill. No tasting, and wash hands after.',
  /** Where no child works yet. */
  whose: 'Whose hands help?',
  off: 'Off',
} as const);

/** Ages to choose from. */
export const smallAges: Readonly<Record<Ages, string>> = inTongue('small', 'smallAges', {
  '4-6': '4 to 6 years',
  '7-9': '7 to 9 years',
  '10-12': '10 to 12 years',
});

/** A mark of their own beside their own loaf, and no name. */
export const handMark = inTongue('small', 'handMark', {
  title: 'Your marks',
  detail: 'Each child picks one. Press it again to put it back.',
  pick: 'Pick your mark',
  shape: 'Put your mark by your loaf.',
  find: 'Find your mark.',
} as const);

export const handMarks: Readonly<Record<HandMark, string>> = inTongue('small', 'handMarks', {
  star: 'Star',
  moon: 'Moon',
  fish: 'Fish',
  leaf: 'Leaf',
  boat: 'Boat',
  sun: 'Sun',
});

/** How far a wait has come, for ears; without a number. */
export const waitPath = inTongue('small', 'waitPath', {
  begins: 'The wait has begun.',
  some: 'The snail is on its way.',
  half: 'The snail is half way.',
  most: 'The snail is past half way.',
  near: 'The snail is nearly there.',
  there: 'The snail is there.',
} as const);

/** What is counted by taps while the baker works: each press is one of them done. */
export const countGame = inTongue('small', 'countGame', {
  corners: 'Tap a corner for each fold',
  pieces: 'Tap one for each piece',
  baskets: 'Tap one for each basket',
  rounds: 'Tap one for each round',
  /** Names of the things to tap, for ears. */
  nth: { first: 'First', second: 'Second', third: 'Third', fourth: 'Fourth' },
} as const);

/** Before what only a grown-up does: something to read, and a question about it. */
export const readAnswer = inTongue('small', 'readAnswer', {
  title: 'For a grown-up',
  back: 'Back',
  again: 'Not that one. Read it once more.',
  shut: 'That is enough for now. Bake on, and try again later.',
} as const);

/**
 * What is read, what is asked of it, and four answers that all stand in it: whoever cannot read it has
 * nothing to go by. The first is the right one; the screen mixes them.
 */
export const readings4 = inTongue('small', 'readings4', {
  cellar: {
    text: 'The jar is in the cellar, the tin in the attic. The bowl is in the shed. The cloth hangs in the porch.',
    ask: 'What is in the shed?',
    answers: { right: 'bowl', one: 'jar', two: 'tin', three: 'cloth' },
  },
  order: {
    text: 'They bought rye after oats. Oats came after wheat, and barley after rye.',
    ask: 'What was bought last?',
    answers: { right: 'barley', one: 'rye', two: 'oats', three: 'wheat' },
  },
  days: {
    text: 'Monday was for plums and Tuesday for figs. Thursday was for pears, Sunday for dates.',
    ask: 'What was for Thursday?',
    answers: { right: 'pears', one: 'plums', two: 'figs', three: 'dates' },
  },
  weights: {
    text: 'The brown sack is lighter than the grey one. The white one is heaviest. The green one weighs less than the brown.',
    ask: 'Which sack is lightest?',
    answers: { right: 'green', one: 'brown', two: 'grey', three: 'white' },
  },
  lane: {
    text: 'The ferry leaves before the train. The bus leaves after the train, and the tram after the bus.',
    ask: 'Which leaves second?',
    answers: { right: 'train', one: 'ferry', two: 'bus', three: 'tram' },
  },
} as const);
