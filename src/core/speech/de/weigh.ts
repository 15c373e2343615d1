import type * as english from '../words/weigh.ts';
import type { InTongue } from '../tongue.ts';
import type { StageWords } from '../words.ts';
import { bulk } from './bulk.ts';

const line = (detail: string, then: string): StageWords => ({
  headline: '{grams} {name}',
  detail,
  slab: 'Ist drin',
  then,
  spoken: '{grams} {name}.',
});

const { detail, slab, then } = bulk['bulk.scatter'];

export const weighWords: InTongue<typeof english.weighWords> = {
  feed: line('In das saubere Glas.', 'dann die nächste Zeile'),
  first: line('In die Schüssel. Erst die Waage auf null.', 'dann die nächste Zeile'),
  second: line('Auf den Teig. Erst die Waage auf null.', 'dann die nächste Zeile'),
  filling: { ...line(detail, then), slab },
  worked: {
    ...line('Arbeite es gleichmäßig ein, in jedem Laib gleich viel.', 'dann formst du ihn'),
    spoken: '{grams} {name}. Arbeite es ein.',
  },
};

export const weighNames: InTongue<typeof english.weighNames> = {
  water: 'Wasser',
  levain: 'Sauerteig',
  salt: 'Salz',
  secondWater: 'zweites Wasser',
  seed: 'Anstellgut',
};

export const weighThen: InTongue<typeof english.weighThen> = {
  next: 'dann {name}',
  last: 'das ist die letzte',
};

export const weighLines: InTongue<typeof english.weighLines> = {
  soakerWater: 'Wasser für: {name}',
  weighRough: 'Deine Waage ist zu grob für so wenig. Nimm eine feinere.',
};
