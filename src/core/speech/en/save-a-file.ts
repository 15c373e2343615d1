/** Saving all of it as a file. */
export const saveAFile = {
  detail: 'Log, notes, photos, kitchen, pictures and circle.',
  names: 'Names and voices',
  /** Each time anew: names leave the tablet only where that is wanted. */
  marks: 'no: N 1, N 2',
  named: 'yes, this once',
  care: 'Whoever has the file reads the names and hears the voices.',
  /** A note may name somebody: it is in the file either way. */
  notes: 'Notes and photos of bakes are in it as they are.',
  slab: 'Save it',
  sheet: 'Readings as a sheet',
  sheetFile: 'readings.csv',
  noReadings: 'no reading yet',
  handed: { shared: 'handed on', saved: 'saved', left: 'not saved', failed: 'not saved' },
  keepsakesLeftOut:
    'Notes, photos and voices of bakes could not be read. The saved file holds all but them.',
  othersLeftOut: 'A log of another tablet could not be read. The saved file holds all but that.',
} as const;
