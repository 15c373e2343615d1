import type * as english from '../words/crust.ts';
import type { InTongue } from '../tongue.ts';

export const crustActs: InTongue<typeof english.crustActs> = {
  crustReady: { label: 'Nimm ihn heraus', then: 'dann auf das Gitter' },
  crustNotYet: { label: 'Noch 5 Minuten', then: 'dann wieder nachsehen' },
  crustOnRack: { label: 'Aus dem Topf', then: 'auf den Rost, 5 Minuten' },
  crustOver: { label: 'Zu dunkel: raus', then: 'dann auf das Gitter' },
};
export const crustMore: InTongue<typeof english.crustMore> = {
  label: 'Noch {count} Minuten',
  then: 'dann wieder messen',
};
export const crust: InTongue<typeof english.crust> = {
  headline: 'Entscheide nach der Kruste',
  because: {
    out: 'Goldbraun und gar: nimm ihn heraus.',
    dark: 'Dunkel genug: nimm ihn jetzt heraus.',
    trayBelowNextTime: 'Unten dunkel: jetzt raus. Nächstes Mal: Blech darunter, Rost höher.',
    outOfPotOnRack: 'Unten dunkel, nicht gar. Auf den blanken Rost.',
    onRack: 'Unten dunkel, nicht gar. Noch fünf Minuten.',
  },
  stays: {
    pale: 'Noch blass. Noch fünf Minuten.',
    tent: 'Dunkel, aber innen roh. Deck ihn locker ab.',
    raw: 'Innen roh. Noch fünf Minuten.',
    early: 'Zu früh. Noch fünf Minuten.',
    unsure: 'Die Zeichen sagen zu wenig. Noch fünf Minuten.',
  },
  low: 'Kern {got} von {crumbHeat}. Noch etwa {minutes}.',
  more: { raw: 'Innen roh. Noch etwa {minutes}.', pale: 'Noch blass. Noch etwa {minutes}.' },
  asks: {
    askColour: 'Schau auch auf die Farbe.',
    askBase: 'Klopf auf den Boden.',
    coreSecond: 'Miss noch mal, weg von der Einlage.',
    coreThird: 'Miss an einer dritten Stelle.',
    coreFahrenheit: 'Miss noch mal in der Mitte.',
    coreNotCrumb: 'Miss noch mal in der Mitte.',
  },
};
