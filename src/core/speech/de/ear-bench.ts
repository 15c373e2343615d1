import type * as english from '../words/ear-bench.ts';
import type { InTongue } from '../tongue.ts';

export const earBench: InTongue<typeof english.earBench> = {
  shut: 'Ohr zu',
  opens: 'Ein Druck öffnet es',
  say: 'Sag: {phrases}',
  digits: 'Sag die Ziffern',
  speaks: 'Ich höre dich',
  tiles: 'Bitte von Hand',
  lost: {
    denied: 'Ohr: nicht erlaubt',
    none: 'Kein Mikrofon',
    gone: 'Mikrofon ist weg',
    failed: 'Ohr geht nicht',
  },
  again: 'Tipp: noch mal',
  or: '{one}, {other}',
};

export const earPhrases: InTongue<typeof english.earPhrases> = {
  done: 'das ist fertig',
  takeBack: 'nimm das zurück',
  sayAgain: 'sag das noch mal',
  longer: 'wie lange noch',
  hush: 'bitte leise',
  reading: 'neue Messung',
  notYet: 'noch nicht',
  ready: 'es ist so weit',
  showMe: 'zeig mir wie',
  lidOff: 'Deckel ist ab',
  springs: 'springt zurück',
  slowly: 'langsam',
  stays: 'bleibt',
  yes: 'ja',
  no: 'nein',
};

export const earSays: InTongue<typeof english.earSays> = {
  tiles: 'Das habe ich nicht verstanden. Bitte von Hand.',
  digits: 'Sag es Ziffer für Ziffer.',
  agree: 'Sag ja oder nein.',
  byHand: 'Das geht nur von Hand.',
  lost: {
    denied: 'Ich darf hier nicht hören. Bitte von Hand.',
    none: 'Ich finde kein Mikrofon. Bitte von Hand.',
    gone: 'Das Mikrofon ist weg. Bitte von Hand.',
    failed: 'Ich kann jetzt nicht hören. Bitte von Hand.',
  },
};
