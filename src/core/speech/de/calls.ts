import type * as english from '../words/calls.ts';
import type { InTongue } from '../tongue.ts';

export const callWords: InTongue<typeof english.callWords> = {
  look: 'Komm, sieh nach',
  act: 'Es ist Zeit',
  hot: 'Heiß: jetzt',
};
export const calls: InTongue<typeof english.calls> = {
  look: 'Komm, sieh nach: {name}.',
  act: 'Es ist Zeit: {name}.',
  hot: 'Heiß, jetzt: {name}. Kinder, zurücktreten.',
  lid: 'Heiß: {name}, weg von dir: Dampf. Kinder, zurücktreten.',
  then: 'Dann: {name}.',
  both: '{bake} und {other}',
  also: '{name}, und {other}',
  alsoLook: '{name}, und ein Blick: {other}',
  reminder: 'Wartet noch: {name}.',
  snooze: 'In 2 Minuten',
  snoozesLeft: { 1: '1-mal', 2: '2-mal' },
  putOff: {
    1: 'Ich rufe ein letztes Mal, in 2 Minuten.',
    2: 'Ich rufe in 2 Minuten noch mal.',
  },
  quietTill: 'Ruft um {time}',
};
export const callSubjects: InTongue<typeof english.callSubjects> = {
  'levain.look': 'der Sauerteig',
  'mix.salt': 'Salz dazu',
  'bulk.fold': 'Teig falten',
  'bulk.spread': 'Teig ausziehen',
  'bulk.look': 'der Teig',
  'shape.finalShape': 'Laibe formen',
  'proof.toFridge': 'Laibe in den Kühl\u00adschrank',
  'proof.look': 'die Laibe im Kühl\u00adschrank',
  'proof.poke': 'die warmen Laibe',
  'cool.handOver': 'die kühlen Laibe',
  turnOn: 'Ofen an',
  poke: 'den nächsten Laib prüfen',
  lift: 'Deckel ab, {pot}',
  vent: 'Dampf herauslassen',
  judge: 'die Kruste ansehen',
  turnOff: 'Ofen aus',
};
