import { inTongue } from '../tongue.ts';

/**
 * What a label may have to name, as it is shown; what is kept of it is core/formula/allergen-texts.ts.
 * French and German by the official names of Regulation (EU) 1169/2011, Annex II, from memory.
 */
export const allergenNames = inTongue('allergens', 'allergenNames', {
  gluten: 'gluten',
  nuts: 'tree nuts',
  sesame: 'sesame',
  milk: 'milk',
  egg: 'egg',
  soya: 'soya',
  peanuts: 'peanuts',
  sulphites: 'sulphites',
  mustard: 'mustard',
  celery: 'celery',
  lupin: 'lupin',
  fish: 'fish',
  crustaceans: 'crustaceans',
  molluscs: 'molluscs',
} as const);

/** The grains and the nuts that a label names one by one, by the words that are kept. */
export const kindNames = inTongue('allergens', 'kindNames', {
  wheat: 'wheat',
  rye: 'rye',
  barley: 'barley',
  oats: 'oats',
  'spelt wheat': 'spelt wheat',
  spelt: 'spelt',
  hazelnut: 'hazelnut',
  walnut: 'walnut',
  almond: 'almond',
  cashew: 'cashew',
  pecan: 'pecan',
  pistachio: 'pistachio',
  'Brazil nut': 'Brazil nut',
  macadamia: 'macadamia',
} as const);

/** What a kind of filling may bring, and has to be looked up. */
export const allergenAsked = inTongue('allergens', 'allergenAsked', {
  ifSaid: '{name}, if the packet says so',
  nut: '{name} (name the nut)',
  grain: '{name} (name the grain)',
} as const);

export const allergenPage = inTongue('allergens', 'allergenPage', {
  label: 'Allergens',
  title: 'Allergens of {name}',
  kindAsk: { gluten: 'Which grain?', nuts: 'Which nuts?' },
  caution: 'Read the packet: labels change.',
  /** Over the names: how the list stands, and the caution. */
  stands: {
    open: 'Not answered yet. Read the packet: labels change.',
    memory: 'From memory. Read the packet: labels change.',
    none: 'None, packet read. Labels change: look again.',
    read: 'Packet read. Labels change: look again.',
  },
  none: 'None of them',
  right: 'The packet says so',
  others: 'The other names',
  first: 'The first names',
  maybe: 'look it up',
  yes: 'named',
  /** How its list stands, in a few words. */
  states: {
    open: 'not answered',
    memory: 'from memory',
    none: 'none, packet read',
    read: 'packet read',
  },
  /** The same as a sentence. */
  told: {
    open: 'No one has answered yet.',
    memory: 'From what we know: {allergens}.',
    none: 'The packet names none.',
    read: 'The packet names {allergens}.',
  },
  byGrain: 'Its grain: {allergens}. The rest: not answered.',
} as const);

/** All that a bread brings: on its page, and on paper. */
export const allergensTold = inTongue('allergens', 'allergensTold', {
  brings: 'Allergens in it: {allergens}.',
  unanswered: 'Not answered yet: {name}.',
} as const);
