/** Saving all of it as a file. */
export const saveAFile = {
  detail: 'The log, the kitchen, the pictures and the circle.',
  names: 'With names',
  /** Each time anew: names leave the tablet only where that is wanted. */
  marks: 'no: N 1, N 2',
  named: 'yes, this once',
  care: 'Whoever has the file reads the names, and what each must not eat.',
  slab: 'Save it',
} as const;
