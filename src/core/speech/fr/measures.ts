import type * as english from '../measures.ts';
import type { InTongue } from '../tongue.ts';

export const counted: InTongue<typeof english.counted> = {
  gram: { one: 'gramme', other: 'grammes' },
  ounce: { one: 'once', other: 'onces' },
  pound: { one: 'livre', other: 'livres' },
  degree: { one: 'degré', other: 'degrés' },
  'degree Fahrenheit': { one: 'degré Fahrenheit', other: 'degrés Fahrenheit' },
  percent: { one: 'pour cent', other: 'pour cent' },
  minute: { one: 'minute', other: 'minutes' },
  hour: { one: 'heure', other: 'heures' },
  day: { one: 'jour', other: 'jours' },
  second: { one: 'seconde', other: 'secondes' },
  loaf: { one: 'pain', other: 'pains' },
  load: { one: 'tour', other: 'tours' },
};

export const between: InTongue<typeof english.between> = {
  to: '{least} à {most}',
  minus: 'moins {number}',
  of: '{done} sur {of}',
  time: '{time}',
};
