import type * as english from '../words/cool.ts';
import type { InTongue } from '../tongue.ts';
import { RING } from './care.ts';

export const cool: InTongue<typeof english.cool> = {
  'oven.queued': {
    headline: 'Jetzt gilt der Ofen',
    detail: 'Die Laibe warten, wo sie sind, bis sie dran sind.',
    slab: 'Zum Ofen',
    then: 'er sagt, was dann kommt',
    spoken: 'Jetzt gilt der Ofen. Die Laibe warten, wo sie sind.',
  },
  'cool.cooling': {
    headline: 'Lass die Laibe auskühlen',
    detail: 'Auf dem Gitter bis {time}. Nicht warm einpacken.',
    slab: 'Sie sind kühl',
    then: 'dann übergeben',
    spoken: 'Um {time} sind sie wohl kühl. Lass sie auf dem Gitter.',
    care: 'Frische Laibe und Töpfe verbrennen dich: Kinder, zurücktreten. Erst unter {bagHeat} einpacken.',
  },
  'cool.handOver': {
    headline: 'Beschrifte die Laibe und übergib sie',
    detail: 'Name, Datum und was drin ist. Warme Tüten offen lassen.',
    slab: 'Übergeben',
    then: 'dann eine Notiz',
    spoken: 'Beschrifte die Laibe, dann übergib sie. Warme Tüten offen lassen.',
    care: 'Nenn jedes Allergen; Weizen und Roggen sind nicht glutenfrei. Beim Verkauf: prüf die örtlichen Regeln.',
  },
  'cool.note': {
    headline: 'Notier, wie es geworden ist',
    detail: 'Eine Zeile für das nächste Mal.',
    slab: 'Notiert',
    then: 'und dieses Backen ist fertig',
    spoken: 'Notier, wie es geworden ist. Eine Zeile für das nächste Mal.',
  },
  // Common practice, no source: a flat bread two fingers thick.
  'rescue.tray': {
    headline: 'Back es flach auf dem Blech',
    detail: 'Neues Ziel: Ofen auf {trayHeat}. Auf geöltem Blech ausziehen, 20 bis 25 Minuten.',
    slab: 'Blech ist draußen',
    then: 'dann eine Notiz',
    spoken: '{trayHeat} jetzt. Geöltes Blech, zwanzig bis fünfundzwanzig Minuten.',
    care: `Teig ohne Einlage ist gut; bei einer Einlage im Zweifel wegwerfen. ${RING}`,
  },
  done: {
    headline: 'Spül ab: dieses Backen ist fertig',
    detail: 'Es steht im Tagebuch, mit deiner Notiz.',
    slab: 'Zum Anfang',
    then: 'das nächste planen',
    spoken: 'Dieses Backen ist fertig. Es steht im Tagebuch.',
  },
  ended: {
    headline: 'Räum auf: dieses Backen ist zu Ende',
    detail: 'Was du bisher getan hast, steht im Tagebuch.',
    slab: 'Zum Anfang',
    then: 'das nächste planen',
    spoken: 'Dieses Backen ist zu Ende. Was du getan hast, steht im Tagebuch.',
  },
};
export const denseCooling: InTongue<typeof english.denseCooling> = {
  ...cool['cool.cooling'],
  detail: 'Auf dem Gitter bis {time}. Dichter Roggen braucht 12 bis 24 Stunden.',
  then: 'dann übergeben',
  spoken: 'Um {time} sind sie wohl fest. Dichter Roggen braucht zwölf bis vierundzwanzig Stunden.',
};
