import type * as english from '../words/pedal.ts';
import type { InTongue } from '../tongue.ts';

export const pedal: InTongue<typeof english.pedal> = {
  title: 'Pedal oder Klicker',
  detail: 'Drück hier eins, dann das Pedal.',
  care: 'Es öffnet keine Sperre: Heißes, Klinge und Maschine bleiben Handarbeit.',
  media: 'Kopf\u00adhörer\u00adtasten',
  mediaIs: { on: 'An', off: 'Aus' },
  mediaDetail: 'Start: fertig. Vor: noch mal sagen. Zurück: leise.',
  none: 'Keine gelernt',
  taught: '{count} gelernt',
  noKey: 'Keine Taste',
  does: {
    done: 'Fertig',
    next: 'Nächste Antwort',
    takeBack: 'Nimm das zurück',
    sayAgain: 'Sag das noch mal',
    longer: 'Wie lange noch?',
    hush: 'Bitte leise',
  },
  ask: 'Drück das Pedal einmal',
  for: 'Für „{name}“.',
  refused: 'Diese Taste schreibt oder bewegt. Nimm eine andere.',
  forget: 'Keine Taste dafür',
  byHand: 'Das öffnet nur die Hand.',
};
