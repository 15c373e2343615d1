import type * as english from '../measures.ts';
import type { InTongue } from '../tongue.ts';

export const counted: InTongue<typeof english.counted> = {
  gram: { one: 'Gramm', other: 'Gramm' },
  ounce: { one: 'Unze', other: 'Unzen' },
  // A German Pfund is half a kilo.
  pound: { one: 'englisches Pfund', other: 'englische Pfund' },
  degree: { one: 'Grad', other: 'Grad' },
  'degree Fahrenheit': { one: 'Grad Fahrenheit', other: 'Grad Fahrenheit' },
  percent: { one: 'Prozent', other: 'Prozent' },
  minute: { one: 'Minute', other: 'Minuten' },
  hour: { one: 'Stunde', other: 'Stunden' },
  day: { one: 'Tag', other: 'Tage' },
  second: { one: 'Sekunde', other: 'Sekunden' },
  loaf: { one: 'Laib', other: 'Laibe' },
  load: { one: 'Ladung', other: 'Ladungen' },
};

export const between: InTongue<typeof english.between> = {
  to: '{least} bis {most}',
  minus: 'minus {number}',
  of: '{done} von {of}',
  time: '{time} Uhr',
};
