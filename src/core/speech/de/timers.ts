import type * as english from '../words/timers.ts';
import type { InTongue } from '../tongue.ts';

export const timerWords: InTongue<typeof english.timerWords> = {
  nuts: {
    name: 'Nüsse im Ofen',
    short: 'Nüsse',
    subject: 'Nüsse im Ofen',
    care: 'Blech heiß: trockene Handschuhe, Kinder 1 m weg.',
  },
  inOven: {
    name: 'Etwas im Ofen',
    short: 'Ofen',
    subject: 'etwas im Ofen',
    care: 'Es ist heiß: trockene Handschuhe, Kinder 1 m weg.',
  },
  kettle: {
    name: 'Wasserkocher',
    short: 'Kocher',
    subject: 'der Wasserkocher',
    care: 'Kochendes Wasser: Erwachsene gießen. Kinder 1 m weg.',
  },
  other: { name: 'Etwas anderes', short: 'Wecker', subject: 'dein Wecker' },
};
export const timer: InTongue<typeof english.timer> = {
  title: 'Wecker',
  minutes: 'Tipp ein, wie viele Minuten',
  ask: 'Bis {time}: drück, wofür er ist',
  names: 'Wofür er ist',
  unit: 'min',
  hint: 'Bis zu 999 Minuten',
  began: '{name}: {minutes}, bis {time}.',
  full: 'Mehr Wecker passen nicht. Stopp erst einen.',
  over: '{name}: Zeit um',
  said: '{name}: Zeit um.',
  ended: 'Er endete um {time}.',
  stop: 'Stoppen',
  stopThen: 'dann zurück, wo du warst',
  stopOne: 'Stoppen: {name}, {time}',
  line: '{time} {name}',
  running: 'Wecker: {lines}',
};
