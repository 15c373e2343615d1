import type * as english from '../words/several.ts';
import type { InTongue } from '../tongue.ts';

export const several: InTongue<typeof english.several> = {
  place: '{bake} · {place}',
  ovenOther: 'Ofen · Laib: {bake}',
  twin: '{bake} {time}',
  said: '{bake}',
  twinSaid: '{bake} von {time}',
  sentence: '{bake}.\u00a0{words}',
  subject: '{name}, {bake}',
  goTo: '{bake} {waits}: {stage}. Geh dorthin.',
  goToAt: '{time} {bake} {waits}: {stage}. Geh dorthin.',
  yourTurn: 'du bist dran',
  ovenNext: 'dann Ofen',
  moved: '{bake}: {stage}.',
};
export const waitsFor: InTongue<typeof english.waitsFor> = {
  look: 'Blick',
  touch: 'Hände rein',
  turn: 'braucht dich',
  end: 'Zeit um',
  hot: 'Ofen heiß',
  poke: 'Laib prüfen',
  lid: 'Deckel ab',
  vent: 'Dampf raus',
  colour: 'Kruste ansehen',
};
export const callsNow: InTongue<typeof english.callsNow> = {
  look: 'jetzt nachsehen',
  act: 'jetzt tun',
  hot: 'heiß, jetzt',
};
export const joiners: InTongue<typeof english.joiners> = {
  all: 'und mit von vom im in auf aus für der die das dem & +',
};
