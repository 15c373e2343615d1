import { inTongue } from '../tongue.ts';

/** The sheet of dough as a grid, one cell a loaf, to scatter the filling over. */
export const sheet = inTongue('sheet', 'sheet', {
  title: 'Scatter cell by cell',
  edge: '3 cm stay bare',
  /** What one cell gets of one filling; where the shares are not all the same, both. */
  share: '{got} of {name}',
  between: '{least} or {most} of {name}',
  each: 'In each of {count} cells:',
  one: 'All of it in one cell:',
  alt: 'A sheet of {count} cells, its edge of 3 cm bare. Each cell has {name}.',
} as const);
