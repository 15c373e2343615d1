import type * as english from '../words/water.ts';
import type { InTongue } from '../tongue.ts';

export const water: InTongue<typeof english.water> = {
  dough: 'pour une pâte à {celsius}',
  levain: 'pour un levain à {celsius}',
  range: 'ou {range}',
  line: '{line}, {celsius}',
  spoken: '{line}, à {celsius}.',
  moved: 'L’eau passe à {celsius}.',
  ice: 'Dont {grams} en glaçons. Le reste : robinet froid.',
  hot: 'Pas plus chaud : départ à {celsius}, et plus de temps.',
  warmer: 'Vos dernières pâtes : {got} de trop. Eau plus fraîche.',
  cooler: 'Vos dernières pâtes : {got} de moins. Eau plus chaude.',
  guess: {
    both: 'Supposé : farine et levain comme la cuisine.',
    flour: 'Supposé : farine comme la cuisine.',
    levain: 'Supposé : levain comme la cuisine.',
    tap: 'Supposé : robinet froid à {celsius}.',
    seed: 'Supposé : levain-chef à {celsius}, sorti du frigo.',
  },
};

export const mixTaught: InTongue<typeof english.mixTaught> = {
  right: 'La pâte est comme calculé.',
  warmer: '{got} de plus que calculé : la prochaine eau sera plus fraîche.',
  cooler: '{got} de moins que calculé : la prochaine eau sera plus chaude.',
};

export const whyWater: InTongue<typeof english.whyWater> = {
  title: 'Pourquoi de l’eau à {celsius} ?',
  dough: 'Voulu dans la pâte',
  levain: 'Voulu dans le bocal',
  flour: 'Farine',
  levainNow: 'Levain',
  seed: 'Levain-chef',
  kitchen: 'Cuisine',
  tap: 'Robinet froid',
  read: '{celsius}, mesuré',
  told: '{celsius}, selon vous',
  guessed: '{celsius}, supposé',
  ofFormula: '{celsius}, selon la recette',
  usual: '{celsius}, comme d’habitude',
  change: 'Changer {celsius} voulu',
  wetting: 'La farine mouillée chauffe seule, on ne sait de combien : {range}.',
  one: 'Votre dernière pâte : {got}. L’eau en rattrape la moitié.',
  some: 'Vos {count} dernières pâtes : {got}. L’eau en rattrape l’essentiel.',
  known: 'Vos {count} dernières pâtes : {got}. L’eau le rattrape.',
  as: { warmer: '{got} de plus que calculé', cooler: '{got} de moins que calculé' },
  asReckoned: 'comme calculé',
  rule: 'La température de base dit {celsius}. Elle compte un peu de levain comme un kilo de farine : un second avis.',
  most: 'Jamais plus de {celsius} : mains et levain en souffriraient.',
  second: 'Peu d’eau change peu une grosse pâte.',
  measure: 'Mesurez la pâte quand même.',
};
