import type * as english from '../words/allergens.ts';
import type { InTongue } from '../tongue.ts';

// These are kept in formulas and lists and compared there in the words of the English catalogue,
// by small letters: the same words in every tongue, or what somebody must not eat is not found again.
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
} as const;
export const glutenOf: InTongue<typeof english.glutenOf> = {
  wheat: 'wheat',
  wholeWheat: 'wheat',
  rye: 'rye',
  spelt: 'spelt wheat',
  barley: 'barley',
};
export const allergenPage: InTongue<typeof english.allergenPage> = {
  label: 'Allergene',
  title: 'Allergene: {name}',
  kindAsk: { gluten: 'Welches Getreide?', nuts: 'Welche Nüsse?' },
  caution: 'Frag die Packung: Angaben ändern sich.',
  stands: {
    open: 'Noch ohne Antwort. Frag die Packung: Angaben ändern sich.',
    memory: 'Aus dem Gedächtnis. Frag die Packung: Angaben ändern sich.',
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
