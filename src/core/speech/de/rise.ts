import type * as english from '../words/rise.ts';
import type { InTongue } from '../tongue.ts';

export const rise: InTongue<typeof english.rise> = {
  say: 'Kurve vor\u00ADlesen',
  bowl: 'Anstieg in der Schüssel',
  jar: 'Anstieg im Glas',
  numbers: 'Als Tabelle',
  chart: 'Als Kurve',
  none: 'Gerade geht hier nichts.',
  title: { dough: 'Wie weit der Teig ist', loaf: 'Wie weit der Laib ist' },
  goal: { dough: 'Ziel {percent}', loaf: 'so weit' },
  likely: 'wohl',
  inJar: 'im Glas',
  now: 'jetzt',
  band: 'Vier von fünf landen im schraffierten Band.',
  tubMark: '{percent}',
  atLeast: '{percent} oder mehr',
  jarMark: 'Glas {percent}',
  growth: { none: 'nicht gewachsen', little: 'ein wenig', grown: 'gewachsen', unsure: 'Blick' },
  dent: { springs: 'springt', slow: 'langsam', stays: 'bleibt', unsure: 'Blick' },
  table: {
    title: 'Dasselbe in Zahlen',
    time: 'Zeit',
    read: 'Gelesen',
    likely: 'Erwartet',
    span: 'Zwischen',
  },
  span: '{least} bis {most}',
  over: 'über {percent}',
  alt: {
    dough: 'Anstieg über die Zeit. Jetzt wohl {percent}, Ziel {goal}. Messwerte: {count}.',
    loaf: 'Reife über die Zeit. Jetzt wohl {percent} vom Ziel. Blicke: {count}.',
  },
  spoken: {
    dough: 'Jetzt etwa {percent}. So weit von {time} bis {until}.',
    loaf: 'Jetzt etwa {percent} vom Ziel. So weit von {time} bis {until}.',
    doughLong: 'Jetzt etwa {percent}. Noch etwa {minutes}.',
    loafLong: 'Jetzt etwa {percent} vom Ziel. Noch etwa {minutes}.',
    doughThere: 'Jetzt etwa {percent}. Er kann so weit sein: sieh nach.',
    loafThere: 'Jetzt etwa {percent} vom Ziel. Er kann so weit sein: sieh nach.',
  },
};
