import type * as english from '../words/shape.ts';
import type { InTongue } from '../tongue.ts';
import { RAW_DOUGH } from './care.ts';

export const shape: InTongue<typeof english.shape> = {
  'shape.divide': {
    headline: 'Teile in Stücke zu {grams}',
    detail: '{loaves}. Wieg jedes Stück, Reste in die Mitte.',
    slab: 'Alles geteilt',
    then: 'dann rundwirken',
    spoken: '{loaves}, je {grams}. Wieg jedes Stück.',
    care: RAW_DOUGH,
  },
  'shape.preshape': {
    headline: 'Wirke jedes Stück locker rund',
    detail: 'Wenig Mehl, glatte Seite oben. Merk dir die Reihenfolge.',
    slab: 'Alle rund',
    then: 'dann ruhen sie',
    spoken: 'Wirke jedes Stück locker rund. Glatte Seite nach oben.',
    care: RAW_DOUGH,
  },
  'shape.benchRest': {
    headline: 'Lass die Stücke ruhen',
    detail: 'Deck sie zu, wisch die Fläche. Formen: {time}.',
    slab: 'Jetzt formen',
    then: 'das erste Stück zuerst',
    spoken: 'Um {time} formst du. Deck die Stücke zu.',
  },
  'shape.finalShape': {
    headline: 'Forme jeden Laib',
    detail: 'Mehl, wenden, falten, straff aufrollen. Schluss zukneifen.',
    slab: 'Alle geformt',
    then: 'dann in die Gärkörbe',
    spoken: 'Forme jeden Laib. Roll ihn straff auf und kneif den Schluss zu.',
    care: RAW_DOUGH,
  },
  'shape.basket': {
    headline: 'Leg jeden Laib in seinen Gärkorb',
    detail: 'Den Korb gut bemehlen. Schluss nach oben, dann zudecken.',
    slab: 'Liegen im Korb',
    then: 'dann gehen sie noch mal',
    spoken: 'Leg jeden Laib in seinen Gärkorb. Schluss nach oben, dann zudecken.',
    care: RAW_DOUGH,
  },
  'shape.scoop': {
    headline: 'Füll den Teig in die Formen',
    detail: '{grams} in jede gefettete Form. Nasse Hände, oben glatt.',
    slab: 'In den Formen',
    then: 'dann geht er noch mal',
    spoken: '{grams} in jede gefettete Form. Nasse Hände.',
    care: RAW_DOUGH,
  },
};
export const filledWords: InTongue<typeof english.filledWords> = {
  'shape.finalShape': 'So viel Einlage auf jeden. Straff aufrollen, Schluss zukneifen.',
  'shape.scoop': 'Rühr die Einlage ein, dann {grams} in jede gefettete Form.',
};

const basket = shape['shape.basket'];

export const basketWords: InTongue<typeof english.basketWords> = {
  counter: {
    ...basket,
    detail: 'Schluss oben, zudecken. Sie stehen {minutes}, dann Kühl\u00adschrank.',
    then: '{minutes} draußen, dann kalt',
    spoken:
      '{minutes} stehen sie draußen, dann Kühl\u00adschrank. Schluss nach oben, dann zudecken.',
  },
  fridge: {
    ...basket,
    detail: 'Schluss oben, zudecken. Dann gleich in den Kühl\u00adschrank.',
    then: 'dann gleich kalt stellen',
    spoken: 'Leg jeden Laib in seinen Gärkorb. Dann gleich in den Kühl\u00adschrank.',
  },
};
