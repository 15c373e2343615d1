import { inTongue } from '../tongue.ts';

/** The heads of a sheet of readings, and the words in its cells. */
export const logSheet = inTongue('log-sheet', 'logSheet', {
  bread: 'Bread',
  version: 'Version',
  begun: 'Bake begun',
  taken: 'Taken',
  hours: 'Hours since',
  what: 'Reading',
  number: 'Number',
  unit: 'Unit',
  seen: 'Seen',
  by: 'By',
  hand: 'Hand',
  probe: 'Probe',
  odd: 'Odd',
  yes: 'Yes',
  was: 'Said before',
} as const);
