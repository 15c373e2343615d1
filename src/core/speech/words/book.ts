import { inTongue } from '../tongue.ts';

/** The Book: its list, a formula's page and what opens out of it. */
export const book = inTongue('book', 'book', {
  title: 'Book',
  edge: 'The formulas',
  baked: 'Baked {date}',
  changed: 'Changed, not kept yet',
  line: '{water} % water, {kinds}',
  how: '{how}. {baked}',
  filled: 'filled',
  away: 'Off the list',
  awayDetail: 'None of these is lost. Press one to bring it back.',
  awayNone: 'All of them are on the list.',
  toList: 'To the list',
  keep: 'Keep it',
  keepThen: 'as version {version}',
  notKept: 'It could not be kept. Nothing is lost.',
  howMuch: 'How much?',
  steps: 'Its steps',
  more: 'More',
} as const);

/** How a bread is made, in a few words. */
export const bookKinds = inTongue('book', 'bookKinds', {
  cold: 'overnight',
  warm: 'same day',
  pot: 'pot',
  tin: 'tin',
  stone: 'stone',
} as const);

export const grains = inTongue('book', 'grains', {
  wheat: 'wheat',
  wholeWheat: 'whole wheat',
  rye: 'rye',
  spelt: 'spelt',
  barley: 'barley',
} as const);

/** Which of the two ways in print a percent is counted. */
export const conventions = inTongue('book', 'conventions', {
  ask: 'How do you count percent?',
  detail: 'Both ways are in print. This bread keeps the one you choose.',
  whole: 'Of all flour',
  wholeMeans: 'the levain’s flour counted in',
  bowl: 'Of the bowl’s flour',
  bowlMeans: 'the levain counts as a line of its own',
  /** Under the name, on a formula's page. */
  wholeTold: '% of all flour',
  bowlTold: '% of the flour in the bowl',
  told: '{loaves} of {piece}, {grams} of dough. {counted}.',
} as const);

/** Lines of a formula. */
export const bookLines = inTongue('book', 'bookLines', {
  water: { whole: 'All water', bowl: 'Water in the bowl' },
  levain: 'Levain',
  secondWater: 'Second water, of all water',
  levainWater: 'Levain hydration',
  salt: 'Salt',
  value: '{percent} % · {grams}',
  percent: '{percent} %',
  ask: '{name}, {unit}',
  was: 'Now {value}',
  is: 'That is {value}',
  usual: '{value}. Usual: {least} to {most} %',
  only: 'Only {least} to {most} {unit}',
  inGrams: 'By weight',
  inPercent: 'By percent',
  remove: 'Take it out',
  one: 'The only flour, so all of it.',
  piece: 'Dough for each loaf',
  pieceAsk: 'How much dough for each loaf?',
  cannot: 'That cannot be a dough.',
} as const);

export const bookScale = inTongue('book', 'bookScale', {
  title: 'How much?',
  detail: 'It changes what is weighed, not the bread.',
  loaves: 'Loaves',
  bread: 'Each loaf, baked',
  bin: 'Flour that is left',
  binAsk: 'How much is left of the {name}?',
  flour: 'All the flour',
  flourAsk: 'How much flour is there?',
  dough: 'All the dough',
  doughAsk: 'How much dough in all?',
  breadAsk: 'How heavy is a baked loaf?',
  told: '{loaves} of {piece}, {grams} of dough.',
} as const);

export const bookFillings = inTongue('book', 'bookFillings', {
  title: 'Add a filling',
  detail: 'It goes in at a tenth of the flour. Change that after.',
  byName: 'Another one',
  nameAsk: 'What is it called?',
  nameDetail: 'Or leave it blank and go on.',
  kindAsk: 'What is it most like?',
  noKind: 'none of these',
  /** What may stand long in a dough is told apart from what may not. */
  keepsAsk: 'How does it keep?',
  allergens: 'Look on its packet for what someone must not eat.',
  shelf: 'On the shelf',
  hardCheese: 'Hard, aged cheese',
  perishable: 'Only in the fridge',
} as const);

/** A short list to add from. Names as a baker says them. */
export const fillingNames = inTongue('book', 'fillingNames', {
  walnut: 'walnuts',
  hazelnut: 'toasted hazelnuts',
  sunflower: 'sunflower seeds',
  pumpkin: 'pumpkin seeds',
  sesame: 'sesame seeds',
  linseed: 'linseed',
  raisin: 'raisins',
  apricot: 'dried apricots',
  olive: 'dry-cured olives, new pack',
  hardCheese: 'hard cheese, in cubes',
} as const);

export const bookMore = inTongue('book', 'bookMore', {
  copy: 'Make a copy',
  compare: 'Compare with',
  versions: 'Versions',
  notes: 'Notes',
  name: 'Its name',
  drop: 'Off the list',
  undo: 'Undo what I changed',
  filling: 'Add a filling',
  count: 'Percent of what?',
  copyName: '{name} {n}',
  dropAsk: 'Take it off the list?',
  dropSaid: 'Its versions and bakes are kept.',
  dropYes: 'Yes, off the list',
  dropNo: 'No, leave it',
  nameAsk: 'What is it called?',
  notesAsk: 'What is good to know about it?',
} as const);

export const bookVersions = inTongue('book', 'bookVersions', {
  title: 'Versions',
  line: 'Version {version}',
  first: 'came with the program',
  since: 'kept {date}',
  now: 'in use now',
  baked: 'baked {date}',
  back: 'Bring it back',
  backThen: 'as version {version}',
  old: '{name}, version {version}',
} as const);

export const bookCompare = inTongue('book', 'bookCompare', {
  ask: 'Compare with',
  title: 'Two breads',
  what: 'In % of all flour',
  none: '–',
  inLevain: '{name} in the levain',
  soaks: 'water to soak {name}',
  other: 'With another',
} as const);
