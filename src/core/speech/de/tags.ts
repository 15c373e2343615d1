import type * as english from '../words/tags.ts';
import type { InTongue } from '../tongue.ts';

export const tagWords: InTongue<typeof english.tagWords> = {
  best: 'Bisher das beste',
  gift: 'Ein Geschenk',
  new: 'Erster Versuch',
  guests: 'Gäste',
  children: 'Mit Kindern',
  market: 'Markt',
  weekday: 'Werktag',
  feast: 'Festtag',
  test: 'Probebacken',
  rescued: 'Gerettet',
};
