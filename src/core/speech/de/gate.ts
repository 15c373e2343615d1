import type * as english from '../words/gate.ts';
import type { InTongue } from '../tongue.ts';

export const gate: InTongue<typeof english.gate> = {
  grownUp: 'Das machen Erwachsene',
  standBack: 'Tritt zurück',
  ring: 'Kinder bleiben 1 m weg.',
  hold: 'Zum Öffnen halten',
  holding: 'Weiter halten',
  twoTaps: 'Oder zweimal tippen',
  first: 'Erst hier',
  second: 'dann hier',
  spoken: 'Das machen Erwachsene. Kinder, zurücktreten.',
  bothHands: 'Beide Hände frei? Kinder, zurücktreten.',
};
export const gateHazards: InTongue<typeof english.gateHazards> = {
  hot: 'Heißes Eisen und Dampf',
  blade: 'Scharfe Klinge',
  machine: 'Heißer Ofen',
};
export const childTasks: InTongue<typeof english.childTasks> = {
  none: ['Mal, wie der Teig jetzt aussieht.', 'Lies die große Zahl laut vor.'],
  hot: [
    'Setz dich auf den Stuhl dort hinten. Zähl bis 20.',
    'Mal den Laib. Wie dunkel wird er?',
    'Ruf, wenn die Tür zu ist.',
  ],
  blade: ['Mal den Schnitt, den du sehen willst.', 'Setz dich. Zähl die trockenen Körbe.'],
  machine: ['Setz dich. Achte auf das Ofenlicht.', 'Mal den Ofen mit der Tür zu.'],
  heavy: ['Halt die Tür weit auf.', 'Mach einen Platz auf dem Tisch frei.'],
  raw: ['Drück die große Taste für uns.', 'Lies vor, was die Waage zeigt.'],
};
