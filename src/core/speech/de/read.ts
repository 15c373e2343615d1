import type * as english from '../words/read.ts';
import type { InTongue } from '../tongue.ts';

export const read: InTongue<typeof english.read> = {
  'read.plan': {
    headline: 'Lies alles einmal durch',
    detail: 'Sieh, was es braucht und wann es dich braucht.',
    slab: 'Ich habe es gelesen',
    then: 'dann prüfst du, was da ist',
    spoken: 'Lies alles einmal durch. Sieh, wann es dich braucht.',
  },
  'read.list': {
    headline: 'Prüfe, was du da hast',
    detail: 'Zeile für Zeile. Sag, wie es wirklich ist.',
    slab: 'Fertig',
    then: 'dann das Anstellgut füttern',
    spoken: 'Prüfe, was du da hast. Sag, wie jedes Ding wirklich ist.',
  },
};
