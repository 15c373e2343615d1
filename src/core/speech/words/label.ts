import { inTongue } from '../tongue.ts';

/**
 * Names of allergens as three lists have them, each in its own order, under the members of
 * core/circle/label/allergen-lists.ts. From memory; local rules come first.
 */
export const listNames = inTongue('label', 'listNames', {
  eu: {
    gluten: 'cereals with gluten',
    crustaceans: 'crustaceans',
    egg: 'eggs',
    fish: 'fish',
    peanuts: 'peanuts',
    soya: 'soybeans',
    milk: 'milk',
    nuts: 'nuts',
    celery: 'celery',
    mustard: 'mustard',
    sesame: 'sesame',
    sulphites: 'sulphites',
    lupin: 'lupin',
    molluscs: 'molluscs',
  },
  us: {
    milk: 'milk',
    egg: 'eggs',
    fish: 'fish',
    shellfish: 'crustacean shellfish',
    nuts: 'tree nuts',
    peanuts: 'peanuts',
    wheat: 'wheat',
    soya: 'soybeans',
    sesame: 'sesame',
  },
  canada: {
    egg: 'eggs',
    milk: 'milk',
    mustard: 'mustard',
    peanuts: 'peanuts',
    shellfish: 'crustaceans and molluscs',
    fish: 'fish',
    sesame: 'sesame',
    soya: 'soy',
    sulphites: 'sulphites',
    nuts: 'tree nuts',
    wheat: 'wheat',
  },
} as const);

/** Other words that name an allergen as well. From memory. */
export const alsoSaid: Readonly<Record<string, readonly string[]>> = inTongue('label', 'alsoSaid', {
  soya: ['soy', 'soybean'],
  sulphites: ['sulfites', 'sulphur dioxide', 'sulfur dioxide'],
});
/** Words of packets that hold an allergen without naming it: its name has to stand beside them. From memory. */
export const hidesIn: Readonly<Record<string, readonly string[]>> = inTongue('label', 'hidesIn', {
  wheat: ['semolina', 'durum'],
  'spelt wheat': ['spelt'],
  oats: ['oatmeal'],
  milk: ['whey', 'casein'],
  sesame: ['tahini'],
  fish: ['anchovy', 'anchovie'],
  crustaceans: ['prawn', 'shrimp'],
});
/** Before “milk”: then it comes of no cow. */
export const plantMilks = inTongue('label', 'plantMilks', [
  'almond',
  'cashew',
  'coconut',
  'oat',
  'rice',
  'soy',
  'soya',
] as const);

/** What stands on a label. */
export const onLabel = inTongue('label', 'onLabel', {
  ingredients: 'Ingredients:',
  water: 'water',
  salt: 'salt',
  contains: 'Contains: {allergens}',
  apart: 'Allergens: bold and underlined',
  notFree: 'Not gluten-free: {allergens}',
  weight: 'Net weight {grams}',
  baked: 'Baked {date}',
  sliced: 'Sliced',
  eatWithin: { one: 'Eat within a day of baking.', many: 'Eat within {days} days of baking.' },
  cold: 'Keep refrigerated',
  /** Common practice, no source. */
  paper: 'Keep in a paper bag, at room temperature.',
} as const);

/** Why a label is not made yet, by the reason's key, under the name of what is asked for. */
export const wanting = inTongue('label', 'wanting', {
  packet: 'packet not read',
  lookUp: 'to be looked up',
  kind: 'which {kinds}?',
  madeOf: 'made of what?',
} as const);

/** The pages of labels. */
export const labelPage = inTongue('label', 'labelPage', {
  title: 'Labels',
  which: 'Labels for which bake?',
  none: 'No orders ahead. Choose a bread.',
  oneBread: 'One bread',
  whichBread: 'Labels for which bread?',
  loaves: { one: '1 loaf', many: '{count} loaves' },
  print: 'Print the labels',
  printIt: 'Print it',
  rules: 'Labels follow local rules: ask yours.',
  sheets: { one: '{count} labels, 1 sheet', many: '{count} labels, {n} sheets' },
  onRoll: '{count} labels, one by one',
  first: 'First answer what is asked',
  leftOut: 'Not answered, so left out: {name}.',
  tooLong: 'Too long for this paper: {name}.',
  gone: 'no formula',
  labels: { one: '1 label', many: '{count} labels' },
  toAnswer: '{count} to answer',
  ways: 'List and paper',
  lists: { eu: 'European Union', us: 'United States', canada: 'Canada' },
  papers: { a4: 'A4', letter: 'Letter', roll: 'Roll' },
  waysAsk: 'Whose list, which paper?',
  waysDetail: 'The list says what to name. A roll is 62 mm wide.',
  names: 'Names',
  namesOn: 'on this print',
  namesOff: 'none',
  bakedOn: 'Baked',
  onDay: 'that day',
  dayBefore: 'the day before',
  lines: 'Your lines',
  noLines: 'none',
  linesAsk: 'Your own lines?',
  linesDetail: 'Your name, your street: a line each, as printed.',
  howMany: 'How many labels',
  fewer: 'One label fewer',
  more: 'One label more',
  answers: 'What is in it',
  answersDetail: 'Packets change: look again now and then.',
  ask: 'Answer these first',
  askDetail: 'Then there is a label. Nothing is guessed.',
  look: '{name} says {allergens}, its packet does not. It is named.',
  otherwise: 'Last baked: version {n}, made otherwise. This label is of the latest.',
  cold: 'It spoils: chill it within 2 hours of cooling.',
  kindAsk: 'Which {kinds} is it?',
  kindDetail: '{name}: the list wants it by its kind.',
  madeOfAsk: 'What is {name} made of?',
  madeOfDetail: 'As its packet lists it, in the same order.',
  justItself: 'Just itself',
  madeOf: 'made of {kinds}',
  eatWithin: 'Eat within',
  daysAsk: 'Eaten within how many days?',
  daysDetail: 'You say. Count from the day of baking.',
  days: { one: '1 day', many: '{days} days' },
} as const);
