import type * as english from '../words/mix.ts';
import type { InTongue } from '../tongue.ts';
import { RAW_DOUGH, RAW_FLOUR } from './care.ts';

export const mix: InTongue<typeof english.mix> = {
  'mix.weigh': {
    headline: 'Wieg Mehl, Wasser und Sauerteig ab',
    detail: 'Alles in eine Schüssel. Waage vor jeder Zeile auf null.',
    slab: 'Alles gewogen',
    then: 'dann von Hand mischen',
    spoken: 'Wieg Mehl, Wasser und Sauerteig ab. Stell die Waage vor jeder Zeile auf null.',
    care: RAW_FLOUR,
  },
  'mix.first': {
    headline: 'Mische, bis kein Mehl mehr trocken ist',
    detail: 'Eine nasse Hand, noch kein Salz. Kratz die Schüssel aus.',
    slab: 'Gemischt',
    then: 'dann ruht der Teig',
    spoken: 'Mische, bis kein Mehl mehr trocken ist. Noch kein Salz.',
    care: RAW_DOUGH,
  },
  'mix.rest': {
    headline: 'Lass den Teig ruhen',
    detail: 'Deck ihn zu, wisch die Fläche. Salz: {time}.',
    slab: 'Jetzt salzen',
    then: 'dann Salz abwiegen',
    spoken: 'Um {time} kommt das Salz dazu. Deck die Schüssel zu.',
  },
  'mix.salt': {
    headline: 'Wieg Salz und zweites Wasser ab',
    detail: 'Zuerst das Salz auf den Teig, dann das Wasser.',
    slab: 'Ist drin',
    then: 'dann einarbeiten',
    spoken: 'Wieg Salz und zweites Wasser ab. Zuerst kommt das Salz.',
    care: RAW_DOUGH,
  },
  'mix.work': {
    headline: 'Arbeite das Salz ein',
    detail: 'Kneif und dreh, bis nichts mehr rutscht oder körnig ist.',
    slab: 'Eingearbeitet',
    then: 'dann den Teig messen',
    spoken: 'Arbeite das Salz ein. Kneif und dreh, bis nichts mehr rutscht.',
    care: RAW_DOUGH,
  },
  'mix.temperature': {
    headline: 'Miss die Teigtemperatur',
    detail: 'Thermo\u00admeter in die Mitte. Tipp ein, was es zeigt.',
    slab: 'Eintippen',
    then: 'dann lässt du ihn gehen',
    spoken: 'Miss die Teigtemperatur. Thermo\u00admeter in die Mitte, dann eintippen.',
  },
};
