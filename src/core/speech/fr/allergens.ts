import type * as english from '../words/allergens.ts';
import type { InTongue } from '../tongue.ts';

// A formula keeps these words, and they are compared with what it keeps: they stay as they are kept.
export const allergenNames: InTongue<typeof english.allergenNames> = {
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
};

export const allergenKinds: InTongue<typeof english.allergenKinds> = {
  gluten: ['wheat', 'rye', 'barley', 'oats', 'spelt wheat'],
  nuts: ['hazelnut', 'walnut', 'almond', 'cashew', 'pecan', 'pistachio', 'Brazil nut', 'macadamia'],
};

export const glutenOf: InTongue<typeof english.glutenOf> = {
  wheat: 'wheat',
  wholeWheat: 'wheat',
  rye: 'rye',
  spelt: 'spelt wheat',
  barley: 'barley',
};

export const allergenPage: InTongue<typeof english.allergenPage> = {
  label: 'Allergènes',
  title: 'Allergènes : {name}',
  kindAsk: { gluten: 'Quelle céréale ?', nuts: 'Quels fruits à coque ?' },
  caution: 'Voyez le paquet : les étiquettes changent.',
  stands: {
    open: 'Pas encore de réponse. Voyez le paquet : les étiquettes changent.',
    memory: 'De mémoire. Voyez le paquet : les étiquettes changent.',
    none: 'Aucun, paquet lu. Les étiquettes changent : relisez.',
    read: 'Paquet lu. Les étiquettes changent : relisez.',
  },
  none: 'Aucun d’eux',
  right: 'Le paquet le dit',
  others: 'Les autres noms',
  first: 'Les premiers noms',
  maybe: 'à vérifier',
  yes: 'nommé',
  states: {
    open: 'pas de réponse',
    memory: 'de mémoire',
    none: 'aucun, paquet lu',
    read: 'paquet lu',
  },
  told: {
    open: 'Personne n’a encore répondu.',
    memory: 'D’après ce qu’on sait : {allergens}.',
    none: 'Le paquet n’en nomme aucun.',
    read: 'Le paquet nomme : {allergens}.',
  },
  byGrain: 'Sa céréale : {allergens}. Le reste : pas de réponse.',
};

export const allergensTold: InTongue<typeof english.allergensTold> = {
  brings: 'Allergènes contenus : {allergens}.',
  unanswered: 'Pas encore de réponse : {name}.',
};
