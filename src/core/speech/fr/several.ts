import type * as english from '../words/several.ts';
import type { InTongue } from '../tongue.ts';

export const several: InTongue<typeof english.several> = {
  place: '{bake} · {place}',
  ovenOther: 'Four · pain {bake}',
  twin: '{bake} {time}',
  said: 'fournée {bake}',
  twinSaid: 'fournée {bake} de {time}',
  sentence: '{bake}.\u00a0{words}',
  subject: '{name}, {bake}',
  goTo: '{bake} {waits} : {stage}. Y aller.',
  goToAt: '{time} {bake} {waits} : {stage}. Y aller.',
  yourTurn: 'à vous',
  ovenNext: 'four ensuite',
  moved: '{bake} : {stage}.',
};

export const waitsFor: InTongue<typeof english.waitsFor> = {
  look: 'à voir',
  touch: 'mains dedans',
  turn: 'à vous',
  end: 'fini',
  hot: 'four chaud',
  poke: 'à revoir',
  lid: 'couvercle',
  vent: 'vapeur',
  colour: 'voir la croûte',
};

export const callsNow: InTongue<typeof english.callsNow> = {
  look: 'voyez',
  act: 'faites-le',
  hot: 'chaud, à vous',
};

export const joiners: InTongue<typeof english.joiners> = {
  all: 'et avec de du des à au aux en sur pour le la les & +',
};
