import type * as english from '../words/allergens.ts';
import type { InTongue } from '../tongue.ts';

// Official names: Regulation (EU) 1169/2011, Annex II, from memory.
export const allergenNames: InTongue<typeof english.allergenNames> = {
  gluten: 'Gluten',
  nuts: 'Schalen\u00adfrüchte',
  sesame: 'Sesam',
  milk: 'Milch',
  egg: 'Eier',
  soya: 'Soja',
  peanuts: 'Erdnüsse',
  sulphites: 'Sulfite',
  mustard: 'Senf',
  celery: 'Sellerie',
  lupin: 'Lupinen',
  fish: 'Fisch',
  crustaceans: 'Krebstiere',
  molluscs: 'Weichtiere',
};

export const kindNames: InTongue<typeof english.kindNames> = {
  wheat: 'Weizen',
  rye: 'Roggen',
  barley: 'Gerste',
  oats: 'Hafer',
  'spelt wheat': 'Dinkelweizen',
  spelt: 'Dinkel',
  hazelnut: 'Haselnuss',
  walnut: 'Walnuss',
  almond: 'Mandel',
  cashew: 'Cashewnuss',
  pecan: 'Pekannuss',
  pistachio: 'Pistazie',
  'Brazil nut': 'Paranuss',
  macadamia: 'Macadamia\u00adnuss',
};

export const allergenAsked: InTongue<typeof english.allergenAsked> = {
  ifSaid: '{name}, wenn die Packung es sagt',
  nut: '{name} (welche Nuss?)',
  grain: '{name} (welches Getreide?)',
};

export const allergenPage: InTongue<typeof english.allergenPage> = {
  label: 'Allergene',
  title: 'Allergene: {name}',
  kindAsk: { gluten: 'Welches Getreide?', nuts: 'Welche Nüsse?' },
  caution: 'Lies die Packung: Angaben ändern sich.',
  stands: {
    open: 'Noch ohne Antwort. Lies die Packung: Angaben ändern sich.',
    memory: 'Aus dem Gedächtnis. Lies die Packung: Angaben ändern sich.',
    none: 'Keine, Packung gelesen. Angaben ändern sich: sieh wieder nach.',
    read: 'Packung gelesen. Angaben ändern sich: sieh wieder nach.',
  },
  none: 'Nichts davon',
  right: 'So sagt es die Packung',
  others: 'Die anderen Namen',
  first: 'Die ersten Namen',
  maybe: 'sieh nach',
  yes: 'genannt',
  states: {
    open: 'ohne Antwort',
    memory: 'aus dem Gedächtnis',
    none: 'keine, Packung gelesen',
    read: 'Packung gelesen',
  },
  told: {
    open: 'Noch hat niemand geantwortet.',
    memory: 'Nach dem, was wir wissen: {allergens}.',
    none: 'Die Packung nennt keine.',
    read: 'Die Packung nennt {allergens}.',
  },
  byGrain: 'Sein Getreide: {allergens}. Der Rest: ohne Antwort.',
};
export const allergensTold: InTongue<typeof english.allergensTold> = {
  brings: 'Allergene darin: {allergens}.',
  unanswered: 'Noch ohne Antwort: {name}.',
};
