import type * as english from '../words/bench.ts';
import type { InTongue } from '../tongue.ts';

export const bench: InTongue<typeof english.bench> = {
  label: 'Backtisch',
  edge: 'Schritt {step} von {steps}: {name}',
  edgeOven: '{name}. Der Ofen heizt auf.',
  endsAt: 'um {time}',
  more: 'Mehr',
  close: 'Schlie\u00adßen',
  thatsIt: 'Passt so',
  key: 'Tipp erst eine Zahl ein',
  of: '{done} von {of}',
  lines: 'Was gewogen wird',
  answers: 'Antworten',
  usual: 'Üblich: {range}',
  point: ',',
  care: 'Vorsicht',
  home: 'Zum Anfang',
  notBegun: {
    headline: 'Hier wurde nichts begonnen',
    detail: 'Der Start wurde zurückgenommen.',
    slab: 'Zum Anfang',
    then: 'noch mal beginnen',
  },
  endRehearsal: 'Probe beenden',
  brokenFormula: '{file} lässt sich nicht lesen.',
  only: 'Hier nur {range}',
};
