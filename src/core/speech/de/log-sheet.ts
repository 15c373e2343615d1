import type * as english from '../words/log-sheet.ts';
import type { InTongue } from '../tongue.ts';

export const logSheet: InTongue<typeof english.logSheet> = {
  bread: 'Brot',
  version: 'Fassung',
  begun: 'Begonnen',
  taken: 'Gemessen',
  hours: 'Stunden seither',
  what: 'Messwert',
  number: 'Zahl',
  unit: 'Einheit',
  seen: 'Gesehen',
  by: 'Womit',
  hand: 'Hand',
  probe: 'Fühler',
  odd: 'Seltsam',
  yes: 'Ja',
  was: 'Vorher gesagt',
};
