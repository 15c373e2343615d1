import type * as english from '../words/log-sheet.ts';
import type { InTongue } from '../tongue.ts';

export const logSheet: InTongue<typeof english.logSheet> = {
  bread: 'Pain',
  version: 'Version',
  begun: 'Fournée commencée',
  taken: 'Pris',
  hours: 'Heures depuis',
  what: 'Mesure',
  number: 'Nombre',
  unit: 'Unité',
  seen: 'Vu',
  by: 'Par',
  hand: 'Main',
  probe: 'Sonde',
  odd: 'Étrange',
  yes: 'Oui',
  was: 'Dit avant',
};
