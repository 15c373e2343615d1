import type * as english from '../words/calls.ts';
import type { InTongue } from '../tongue.ts';

export const callWords: InTongue<typeof english.callWords> = {
  look: 'Venez voir',
  act: 'C’est l’heure',
  hot: 'Chaud, à vous',
};

export const calls: InTongue<typeof english.calls> = {
  look: 'Venez voir : {name}.',
  act: 'C’est l’heure : {name}.',
  hot: 'Chaud, maintenant : {name}. Les enfants, reculez.',
  lid: 'Chaud : {name}, loin de vous : vapeur. Les enfants, reculez.',
  then: 'Puis : {name}.',
  both: '{bake} et {other}',
  also: '{name}, et {other}',
  alsoLook: '{name}, et à voir : {other}',
  reminder: 'Attend toujours : {name}.',
  snooze: 'Dans 2 minutes',
  snoozesLeft: { 1: '1\u00a0fois', 2: '2\u00a0fois' },
  putOff: {
    1: 'J’appelle une dernière fois, dans 2 minutes.',
    2: 'Je rappelle dans 2 minutes.',
  },
  quietTill: 'Appel à {time}',
};

export const callSubjects: InTongue<typeof english.callSubjects> = {
  'levain.look': 'le levain',
  'mix.salt': 'le sel',
  'bulk.fold': 'la pâte à rabattre',
  'bulk.spread': 'la pâte à étirer',
  'bulk.look': 'la pâte',
  'shape.finalShape': 'les pains à façonner',
  'proof.toFridge': 'les pains au frigo',
  'proof.look': 'les pains du frigo',
  'proof.poke': 'les pains tièdes',
  'cool.handOver': 'les pains froids',
  turnOn: 'le four à allumer',
  poke: 'le prochain pain',
  lift: 'le couvercle de {pot}, à ôter',
  vent: 'la vapeur à sortir',
  judge: 'la croûte à voir',
  turnOff: 'le four à éteindre',
};
