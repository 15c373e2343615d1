import type * as english from '../words/running.ts';
import type { InTongue } from '../tongue.ts';

export const running: InTongue<typeof english.running> = {
  title: 'Andere Brote',
  line: '{name}: {stage}',
  lineTime: '{name}: {stage}, {time}',
  overdue: '{name}: {stage}, {minutes} drüber',
  none: 'Kein anderes Brot.',
  more: 'und {count} weitere',
};
export const returnCard: InTongue<typeof english.returnCard> = {
  title: 'Während du weg warst',
  overdue: 'Überfällig um {minutes}: {name}',
  nothingOverdue: 'Nichts ist überfällig.',
  last: 'Zuletzt getan: {name}, {time}',
  nothingDone: 'Noch nichts getan.',
  next: 'Als Nächstes: {name}, {time}',
  nextNow: 'Jetzt: {name}',
  close: 'Ich habe es gelesen',
};
export const countdown: InTongue<typeof english.countdown> = {
  look: {
    to: 'bis zum nächsten Blick',
    past: 'über der Zeit',
    ask: 'Noch {minutes} bis zum nächsten Blick.',
  },
  touch: { to: 'bis Hände rein', past: 'über der Zeit', ask: 'Noch {minutes}, dann Hände rein.' },
  turn: {
    to: 'bis du dran bist',
    past: 'über der Zeit',
    ask: 'Noch {minutes}, bis du dran bist.',
  },
  end: { to: 'noch', past: 'drüber', ask: 'Noch {minutes}.' },
  hot: {
    to: 'bis der Topf heiß ist',
    past: 'schon heiß',
    ask: 'Noch {minutes}, bis der Topf heiß ist.',
  },
  hotPots: {
    to: 'bis die Töpfe heiß sind',
    past: 'schon heiß',
    ask: 'Noch {minutes}, bis die Töpfe heiß sind.',
  },
  hotStone: {
    to: 'bis der Stein heiß ist',
    past: 'schon heiß',
    ask: 'Noch {minutes}, bis der Stein heiß ist.',
  },
  hotOven: {
    to: 'bis der Ofen heiß ist',
    past: 'schon heiß',
    ask: 'Noch {minutes}, bis der Ofen heiß ist.',
  },
  poke: {
    to: 'bis zur nächsten Prüfung',
    past: 'über der Zeit',
    ask: 'Noch {minutes} bis zur nächsten Prüfung.',
  },
  lid: {
    to: 'bis der Deckel abkommt',
    past: 'über der Zeit',
    ask: 'Noch {minutes} bis Deckel ab.',
  },
  vent: {
    to: 'bis der Dampf rauskommt',
    past: 'über der Zeit',
    ask: 'Noch {minutes} bis Dampf raus.',
  },
  colour: {
    to: 'bis zum nächsten Blick',
    past: 'über der Zeit',
    ask: 'Noch {minutes} bis zum nächsten Blick.',
  },
};
export const readyWindow: InTongue<typeof english.readyWindow> = {
  now: 'jetzt {time}',
  earliest: 'frühestens {time}',
  likely: 'wohl {time}',
  latest: 'spätestens {time}',
  alt: 'So weit zwischen {time} und {until}, am ehesten {likely}.',
  spoken: 'Zwischen {time} und {until}. Sieh hin, bevor du dem traust.',
  hours: 'Irgendwann so weit, {time} bis {until}',
};
export const runningLines: InTongue<typeof english.runningLines> = {
  nothingRuns: 'Hier läuft keine Uhr. Es geht nach deinen Händen.',
};
