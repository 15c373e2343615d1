import { inTongue } from '../tongue.ts';

/** Saving all of it as a file. */
export const saveAFile = inTongue('save-a-file', 'saveAFile', {
  /** A note or a photo may tell of somebody: they are in the file either way. */
  detail: 'All that is here, notes and photos as they are.',
  names: 'Names and voices',
  /** Each time anew: names leave the tablet only where that is wanted. */
  marks: 'left out',
  named: 'this once',
  care: 'Whoever has the file reads the names and hears the voices.',
  slab: 'Save it',
  sheet: 'Readings as a sheet',
  sheetFile: 'readings.csv',
  noReadings: 'no reading yet',
  handed: { shared: 'handed on', saved: 'saved', left: 'not saved', failed: 'not saved' },
  keepsakesLeftOut:
    'Notes, photos and voices of bakes could not be read. The saved file holds all but them.',
  othersLeftOut: 'A log of another tablet could not be read. The saved file holds all but that.',
} as const);
