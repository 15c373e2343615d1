/**
 * Names of allergens as three lists have them, each in its own order, under the members of
 * core/circle/label/allergen-lists.ts. From memory; local rules come first.
 */
export const listNames = {
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
} as const;

/** Other words that name an allergen as well. From memory. */
export const alsoSaid: Readonly<Record<string, readonly string[]>> = {
  soya: ['soy', 'soybean'],
  sulphites: ['sulfites', 'sulphur dioxide', 'sulfur dioxide'],
};
/** Words of packets that hold an allergen without naming it: its name has to stand beside them. From memory. */
export const hidesIn: Readonly<Record<string, readonly string[]>> = {
  wheat: ['semolina', 'durum'],
  'spelt wheat': ['spelt'],
  oats: ['oatmeal'],
  milk: ['whey', 'casein'],
  sesame: ['tahini'],
  fish: ['anchovy', 'anchovie'],
  crustaceans: ['prawn', 'shrimp'],
};
/** Before “milk”: then it comes of no cow. */
export const plantMilks = ['almond', 'cashew', 'coconut', 'oat', 'rice', 'soy', 'soya'] as const;

/** What stands on a label. */
export const onLabel = {
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
} as const;

/** Why a label is not made yet, by the reason's key: what is asked. */
export const wanting = {
  packet: 'What does the packet of {name} name?',
  lookUp: '{name}: an allergen is to be looked up.',
  kind: '{name}: which {kinds} is it?',
  madeOf: 'What is {name} made of?',
  eatWithin: 'Eaten within how many days?',
} as const;
