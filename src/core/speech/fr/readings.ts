import type * as english from '../words/readings.ts';
import type { InTongue } from '../tongue.ts';

const poke = [
  { value: 'springs', label: 'Il revient d’un coup' },
  { value: 'slow', label: 'Il revient lentement' },
  { value: 'stays', label: 'Il reste' },
  { value: 'unsure', label: 'Pas sûr' },
] as const;

export const readingNames: InTongue<typeof english.readingNames> = {
  doughTemperature: 'Température de pâte',
  kitchenTemperature: 'Température de cuisine',
  coreTemperature: 'Cœur du pain',
  flourTemperature: 'Température de farine',
  levainTemperature: 'Température de levain',
  fillingTemperature: 'Température de garniture',
  wantedDough: 'Voulu dans la pâte',
  'water.tap': 'Eau froide du robinet',
  'water.bowl': 'Eau versée',
  'rise.dough': 'Pousse de la pâte',
  'rise.levain': 'Pousse du levain',
  'weight.dough': 'Poids de pâte',
  'weight.piece': 'Poids d’un pâton',
  'weight.loaf': 'Poids d’un pain',
  firstPiece: 'Premier pâton',
  edge: 'Bord et bulles',
  growth: 'Pousse au froid',
  poke: 'Test du doigt',
  crust: 'Couleur de croûte',
};

export const readingShort: InTongue<typeof english.readingShort> = {
  doughTemperature: 'Pâte',
  kitchenTemperature: 'Cuisine',
  'weight.dough': 'Pâte',
  'weight.piece': 'Un pâton',
  'weight.loaf': 'Un pain',
};

export const reading: InTongue<typeof english.reading> = {
  begin: 'Tapez le nombre, ou choisissez',
  which: 'Touchez ce que vous avez mesuré',
  noKind: 'Aucune mesure n’a ce nombre',
  number: 'Le nombre lu',
  rest: 'Rien de cela',
  choose: 'Choisissez ce que vous avez mesuré',
  byEye: '{name}, à l’œil',
  inPercent: '{name}, en %',
  back: 'Autres mesures',
  usual: 'D’habitude {range}.',
  odd: 'Étrange : d’habitude {range}.',
  otherScale: 'Étrange : votre sonde montre-t-elle {unit} ?',
  impossible: 'Changez : ici {range}.',
  keep: 'Garder',
  keepOdd: '{got}, noté étrange',
  change: 'Changer le nombre',
  spot: 'Un autre endroit',
  spots: 'Jusqu’ici {got}. Endroit suivant :',
  taken: '{got} : {name}.',
  takenOdd: '{got} : {name}. Gardé, et noté étrange.',
  hot: 'Gants secs. Grille tirée, visage en arrière.',
};

export const readingList: InTongue<typeof english.readingList> = {
  how: 'Touchez une mesure pour la corriger.',
  none: 'Rien n’est encore mesuré.',
  odd: 'étrange',
  was: 'avant {got}',
  probe: 'à la sonde',
  correct: 'Corriger {got}',
  correctHint: '{time} : d’habitude {range}.',
  correctPictures: '{name}, {time} : noté {got}.',
  corrected: '{got} : {name}, corrigé.',
  newer: 'Plus récent',
  older: 'Plus ancien',
};

export const riseInJar: InTongue<typeof english.riseInJar> = {
  name: 'Pousse dans un bocal',
  mark: 'en bocal',
  ask: 'De combien a levé le bocal ?',
  detail: 'Un échantillon de cette pâte, depuis son repère.',
};

export const readingPictures: InTongue<typeof english.readingPictures> = {
  rise: {
    ask: 'De combien a-t-elle levé ?',
    detail: 'Regardez le repère du bac ou du bocal.',
    tiles: [
      { value: '0', label: 'Pas du tout' },
      { value: '25', label: 'D’un quart' },
      { value: '50', label: 'De moitié' },
      { value: '75', label: 'De trois quarts' },
      { value: '100', label: 'Doublé' },
    ],
  },
  edge: {
    ask: 'Comment est le bord ?',
    detail: 'Là où la pâte touche le saladier.',
    tiles: [
      { value: 'flat', label: 'Plat' },
      { value: 'domed', label: 'Bombé' },
      { value: 'fallen', label: 'Retombé' },
    ],
  },
  bubbles: {
    ask: 'Combien de bulles à la paroi ?',
    detail: 'Regardez à travers le côté du bac.',
    tiles: [
      { value: 'none', label: 'Aucune' },
      { value: 'some', label: 'Un peu' },
      { value: 'many', label: 'Beaucoup' },
    ],
  },
  growth: {
    ask: 'De combien a-t-il poussé ?',
    detail: 'Depuis qu’il est au frigo.',
    tiles: [
      { value: 'none', label: 'Pas du tout' },
      { value: 'little', label: 'Un peu' },
      { value: 'grown', label: 'Nettement' },
      { value: 'unsure', label: 'Pas sûr' },
    ],
  },
  poke: {
    ask: 'Que fait le creux du doigt ?',
    detail: 'Doigt fariné, enfoncé de 1 cm. Pâte froide : simple indice.',
    tiles: poke,
  },
  crust: {
    ask: 'De quelle couleur est la croûte ?',
    detail: 'Visez le doré, pas le noir.',
    tiles: [
      { value: 'pale', label: 'Pâle' },
      { value: 'golden', label: 'Dorée' },
      { value: 'dark', label: 'Foncée' },
    ],
  },
};
