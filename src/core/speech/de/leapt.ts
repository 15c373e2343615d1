import type * as english from '../words/leapt.ts';
import type { InTongue } from '../tongue.ts';

export const leapt: InTongue<typeof english.leapt> = {
  back: 'Die Uhr des Tablets ging {minutes} zurück. Jedes Warten läuft weiter wie bisher.',
  ahead: 'Die Uhr des Tablets sprang {minutes} vor. Wurde sie gestellt, oder schlief es?',
  which: 'Sag, was es war',
  beside: { back: 'Uhr ging zurück', ahead: 'Uhr sprang vor' },
  askMore: 'Wurde die Uhr gestellt?',
  title: 'Die Uhr sprang {minutes} vor',
  backTitle: 'Die Uhr ging {minutes} zurück',
  backThen: 'Jedes Warten läuft weiter wie bisher.',
  backHours: 'Die Zeiten hier folgen der Uhr: prüf, ob sie stimmt.',
  slept: 'Es schlief',
  sleptThen: 'Geschlafen: die Stunden sind vergangen. Alle Zeiten hier stimmen.',
  set: 'Sie wurde gestellt',
  setThen: 'Gestellt: keine Zeit verging. Jedes Warten wird {minutes} länger.',
  said: 'Jedes Warten ist so viel länger, wie die Uhr vorsprang. Prüf den Teig.',
};
