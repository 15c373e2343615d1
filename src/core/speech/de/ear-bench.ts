import type * as english from '../words/ear-bench.ts';
import type { InTongue } from '../tongue.ts';

export const earBench: InTongue<typeof english.earBench> = {
  shut: 'Ohr zu',
  say: 'Sag: {words}',
  digits: 'Sag die Ziffern',
  speaks: 'Ich höre dich',
  tiles: 'Bitte von Hand',
  short: { open: 'Offen', shut: 'Zu', tiles: 'Tippen', lost: 'Erneut' },
  lost: {
    denied: 'Mikro aus: hier tippen',
    none: 'Kein Mikro: hier tippen',
    gone: 'Mikro weg: hier tippen',
    failed: 'Ohr aus: hier tippen',
  },
};

export const earSays: InTongue<typeof english.earSays> = {
  tiles: 'Das habe ich nicht verstanden. Bitte von Hand.',
  digits: 'Sag es Ziffer für Ziffer.',
  agree: 'Sag ja oder nein.',
  byHand: 'Das geht nur von Hand.',
  lost: {
    denied: 'Ich darf hier nicht hören. Bitte von Hand.',
    none: 'Ich finde kein Mikrofon. Bitte von Hand.',
    gone: 'Das Mikrofon ist weg. Bitte von Hand.',
    failed: 'Ich kann jetzt nicht hören. Bitte von Hand.',
  },
};
