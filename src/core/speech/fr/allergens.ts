import type * as english from '../words/allergens.ts';
import type { InTongue } from '../tongue.ts';

// Official names: Regulation (EU) 1169/2011, Annex II, from memory.
export const allergenNames: InTongue<typeof english.allergenNames> = {
  gluten: 'gluten',
  nuts: 'fruits à coque',
  sesame: 'sésame',
  milk: 'lait',
  egg: 'œufs',
  soya: 'soja',
  peanuts: 'arachides',
  sulphites: 'sulfites',
  mustard: 'moutarde',
  celery: 'céleri',
  lupin: 'lupin',
  fish: 'poisson',
  crustaceans: 'crustacés',
  molluscs: 'mollusques',
};

export const kindNames: InTongue<typeof english.kindNames> = {
  wheat: 'blé',
  rye: 'seigle',
  barley: 'orge',
  oats: 'avoine',
  'spelt wheat': 'blé épeautre',
  spelt: 'épeautre',
  hazelnut: 'noisette',
  walnut: 'noix',
  almond: 'amande',
  cashew: 'noix de cajou',
  pecan: 'noix de pécan',
  pistachio: 'pistache',
  'Brazil nut': 'noix du Brésil',
  macadamia: 'noix de macadamia',
};

export const allergenAsked: InTongue<typeof english.allergenAsked> = {
  ifSaid: '{name}, si le paquet le dit',
  nut: '{name} (dire lequel)',
  grain: '{name} (dire la céréale)',
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
