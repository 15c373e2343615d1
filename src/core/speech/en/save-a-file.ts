/** Saving all of it as a file. */
export const saveAFile = {
  detail: 'Log, kitchen, pictures and circle.',
  names: 'With names',
  /** Each time anew: names leave the tablet only where that is wanted. */
  marks: 'no: N 1, N 2',
  named: 'yes, this once',
  care: 'Whoever has the file reads the names and their lists.',
  slab: 'Save it',
} as const;
