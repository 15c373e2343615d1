import { inTongue } from '../tongue.ts';

/** Words of the bench that belong to no stage. */
export const bench = inTongue('bench', 'bench', {
  label: 'Bench',
  edge: 'Step {step} of {steps}: {name}',
  /** For ears, after it: while the oven heats ahead of its loaves. */
  edgeOven: '{name}. The oven heats up.',
  endsAt: 'at {time}',
  more: 'More',
  close: 'Close',
  thatsIt: 'That’s it',
  key: 'Key in a number first',
  of: '{done} of {of}',
  lines: 'What is weighed',
  answers: 'Answers',
  usual: '{range} is usual',
  point: '.',
  care: 'Take care',
  home: 'To the start',
  /** Its very start was taken back. */
  notBegun: {
    headline: 'This bake has not begun',
    detail: 'Its start was taken back.',
    slab: 'To the start',
    then: 'begin it again',
  },
  endRehearsal: 'End the rehearsal',
  brokenFormula: '{file} cannot be read.',
  only: 'Only {range} here',
} as const);
