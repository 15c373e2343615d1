import { inTongue } from '../tongue.ts';
import type { Slot } from '../../records/reading-slot.ts';

/** Readings by what they speak of: on tiles, over the keypad, in the list of those taken. */
export const readingNames: Readonly<Record<Slot, string>> = inTongue('readings', 'readingNames', {
  doughTemperature: 'Dough temperature',
  kitchenTemperature: 'Kitchen temperature',
  coreTemperature: 'Inside the loaf',
  flourTemperature: 'Flour temperature',
  levainTemperature: 'Levain temperature',
  fillingTemperature: 'Filling temperature',
  wantedDough: 'Wanted in the dough',
  'water.tap': 'Cold tap water',
  'water.bowl': 'Water poured in',
  'rise.dough': 'Dough rise',
  'rise.levain': 'Levain rise',
  'weight.dough': 'Dough weight',
  'weight.piece': 'Piece weight',
  'weight.loaf': 'Loaf weight',
  firstPiece: 'First piece',
  edge: 'Edge and bubbles',
  growth: 'Growth in the cold',
  poke: 'Dent test',
  crust: 'Crust colour',
});

/** Over its amount, whose unit says the rest. */
export const readingShort: Readonly<Partial<Record<Slot, string>>> = inTongue(
  'readings',
  'readingShort',
  {
    doughTemperature: 'Dough',
    kitchenTemperature: 'Kitchen',
    'weight.dough': 'Dough',
    'weight.piece': 'A piece',
    'weight.loaf': 'A loaf',
  },
);

/** The page that asks what was measured, and what happens there. */
export const reading = inTongue('readings', 'reading', {
  /** A number is keyed first, and said to be what it is by the press that takes it. */
  begin: 'Key the number, or choose',
  which: 'Press what you measured',
  noKind: 'No reading fits that number',
  number: 'The number you read',
  rest: 'None of these',
  choose: 'Choose what you measured',
  byEye: '{name}, by eye',
  inPercent: '{name}, in %',
  back: 'Other readings',
  usual: '{range} is usual.',
  // One line in bigger words, or the last row of keys goes out of sight.
  odd: 'Odd: {range} is usual.',
  otherScale: 'Odd: does your probe show {unit}?',
  impossible: 'Change it: only {range} here.',
  keep: 'Keep it',
  keepOdd: '{got}, marked as odd',
  change: 'Change the number',
  spot: 'One more spot',
  spots: 'So far {got}. Next spot:',
  taken: '{got}: {name}.',
  takenOdd: '{got}: {name}. Kept, and marked as odd.',
  /** The core is measured at a hot oven, the crust seen there. */
  hot: 'Dry mitts. Rack out, face back.',
} as const);

/** The list of the readings of one bake. */
export const readingList = inTongue('readings', 'readingList', {
  how: 'Press one to correct it.',
  none: 'Nothing is measured yet.',
  odd: 'odd',
  was: 'was {got}',
  probe: 'by probe',
  correct: 'Correct {got}',
  correctHint: '{time}: {range} is usual.',
  correctPictures: '{name}, {time}: it says {got}.',
  corrected: '{got}: {name}, corrected.',
  newer: 'Newer',
  older: 'Older',
} as const);

/** A sample of the dough, which keeps the kitchen's time and not the bowl's. */
export const riseInJar = inTongue('readings', 'riseInJar', {
  name: 'Dough rise in a jar',
  mark: 'in a jar',
  ask: 'How far has the jar risen?',
  detail: 'A sample of this dough, from its mark.',
} as const);

/** What each picture tile asks, and its answers, in the order they are shown. */
export const readingPictures = inTongue('readings', 'readingPictures', {
  rise: {
    ask: 'How far has it risen?',
    detail: 'Look at the mark on the tub or jar.',
    tiles: [
      { value: '0', label: 'Not at all' },
      { value: '25', label: 'By a quarter' },
      { value: '50', label: 'By half' },
      { value: '75', label: 'By three quarters' },
      { value: '100', label: 'Doubled' },
    ],
  },
  edge: {
    ask: 'What shape is the edge?',
    detail: 'Where the dough meets the bowl.',
    tiles: [
      { value: 'flat', label: 'Flat' },
      { value: 'domed', label: 'Domed' },
      { value: 'fallen', label: 'Fallen' },
    ],
  },
  bubbles: {
    ask: 'How many bubbles at the side?',
    detail: 'Look through the side of the tub.',
    tiles: [
      { value: 'none', label: 'None' },
      { value: 'some', label: 'Some' },
      { value: 'many', label: 'Many' },
    ],
  },
  growth: {
    ask: 'How much has it grown?',
    detail: 'Since it went into the fridge.',
    tiles: [
      { value: 'none', label: 'Not at all' },
      { value: 'little', label: 'A little' },
      { value: 'grown', label: 'Clearly grown' },
      { value: 'unsure', label: 'Not sure' },
    ],
  },
  poke: {
    ask: 'What does a dent do?',
    detail: 'Floured finger, 1 cm in. Cold dough: a hint only.',
    tiles: [
      { value: 'springs', label: 'Springs back' },
      { value: 'slow', label: 'Comes back slowly' },
      { value: 'stays', label: 'Stays' },
      { value: 'unsure', label: 'Not sure' },
    ],
  },
  crust: {
    ask: 'What colour is the crust?',
    detail: 'Aim for golden, not black.',
    tiles: [
      { value: 'pale', label: 'Pale' },
      { value: 'golden', label: 'Golden' },
      { value: 'dark', label: 'Dark' },
    ],
  },
} as const);
