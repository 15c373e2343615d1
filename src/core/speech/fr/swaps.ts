import type * as english from '../words/swaps.ts';
import type { InTongue } from '../tongue.ts';

export const bookSwaps: InTongue<typeof english.bookSwaps> = {
  press: 'Échan\u00adger',
  title: 'Échanger : {name}',
  detail: 'Chaque touche échange. « Plus » permet d’annuler.',
  dried: 'Séché au lieu de frais',
  fresh: 'Frais au lieu de séché',
  other: 'Plutôt : {name}',
  value: '{is} au lieu de {was}',
  alike: '{is}, comme avant',
  herbs:
    'Les herbes séchées pèsent la moitié des fraîches : usage courant, sans source. Les livres comptent en volume : un tiers.',
  even: 'Même poids : usage courant, sans source.',
};

export const swapChanges: InTongue<typeof english.swapChanges> = {
  salt: 'Sel dedans : {is} au lieu de {was}.',
  saltIs: 'Sel dedans : {is}.',
  water: 'Eau dedans : {is} au lieu de {was}.',
  waterIs: 'Eau dedans : {is}.',
  guess: 'De mémoire : son paquet le sait mieux.',
  perishable: 'Cela se gâte : au froid jusqu’au façonnage, au four dans les 2 heures.',
  hardCheese: 'Un fromage dur, affiné, pasteurisé peut attendre ; tout autre se gâte.',
  shelf: 'Cela se garde sur l’étagère.',
  names: 'L’étiquette doit nommer : {allergens}.',
  drops: 'N’y est plus : {allergens}.',
  same: 'Rien d’autre ne change.',
};

export const herbNames: InTongue<typeof english.herbNames> = {
  fresh: '{name}, frais',
  dried: '{name}, séché',
};
