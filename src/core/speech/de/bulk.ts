import type * as english from '../words/bulk.ts';
import type { InTongue } from '../tongue.ts';
import { ALLERGENS, RAW_DOUGH } from './care.ts';

export const bulk: InTongue<typeof english.bulk> = {
  'bulk.between': {
    headline: 'Lass den Teig gehen',
    detail: 'Hände wieder rein: {time}. Lass ihn zugedeckt.',
    slab: 'Jetzt anfangen',
    then: 'Hände rein, {touch} von {touches}',
    spoken: 'Um {time} kommen deine Hände dran. Lass den Teig zugedeckt.',
  },
  'bulk.fold': {
    headline: 'Falte den Teig, {touch} von {touches}',
    detail: 'Heben, dehnen, falten, drehen, viermal. Stopp, wenn er reißt.',
    slab: 'Gefaltet',
    then: 'dann gärt er weiter',
    spoken: '{touch} von {touches}. Heben, dehnen, falten und drehen, viermal.',
    care: RAW_DOUGH,
  },
  'bulk.spread': {
    headline: 'Zieh den Teig dünn aus',
    detail: 'Auf nasser Fläche. Stopp, wo er sich wehrt.',
    slab: 'Ausgezogen',
    then: 'dann Einlage aufstreuen',
    spoken: 'Zieh den Teig auf nasser Fläche dünn aus. Stopp, wo er sich wehrt.',
    care: RAW_DOUGH,
  },
  'bulk.scatter': {
    headline: 'Streu die Einlage auf',
    detail: 'Trocken und kühl. Lass 3 cm Rand frei.',
    slab: 'Gestreut',
    then: 'dann aufrollen',
    spoken: 'Drei Zentimeter bleiben am Rand frei. Streu die Einlage auf.',
    care: `Frischkäse, Fleisch, Gekochtes, Knoblauch in Öl: nie hier, sie verderben. ${ALLERGENS}`,
  },
  'bulk.roll': {
    headline: 'Roll den Teig auf',
    detail: 'In Drittel falten, dann rollen. In die Schüssel, Schluss unten.',
    slab: 'Aufgerollt',
    then: 'dann gärt er weiter',
    spoken: 'Roll den Teig auf. Zurück in die Schüssel, Schluss nach unten.',
    care: RAW_DOUGH,
  },
  'bulk.proving': {
    headline: 'Lass den Teig gehen',
    detail: 'Nächster Blick: {time}. Lass ihn zugedeckt.',
    slab: 'Jetzt nachsehen',
    then: 'und sagen, was du siehst',
    spoken: 'Nächster Blick: {time}. Lass den Teig gehen.',
  },
  'bulk.look': {
    headline: 'Sieh nach dem Teig',
    detail: 'Sag, was du siehst. „Nicht sicher“ ist auch eine Antwort.',
    slab: 'Nachgesehen',
    then: 'dann entscheidest du',
    spoken: 'Sieh nach dem Teig. Sag, was du siehst.',
  },
};
export const bulkLines: InTongue<typeof english.bulkLines> = {
  fillingSlows: 'Kalte Einlage bremst ihn: etwa {minutes} mehr.',
};
