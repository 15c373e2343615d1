import { inTongue } from '../tongue.ts';

/** What a reading says against what was expected: the sentence before how far the time moved. */
export const movedBy = inTongue('moved', 'movedBy', {
  temperature: { sooner: 'Warmer than planned.', later: 'Cooler than planned.' },
  sign: { sooner: 'Further than expected.', later: 'Slower than expected.' },
  correction: { sooner: 'That is corrected.', later: 'That is corrected.' },
} as const);

/** How far the time moved, and the next look or, before one, the likely hour. */
export const movedTo = inTongue('moved', 'movedTo', {
  sooner: 'About {minutes} sooner, look at {time}.',
  later: 'About {minutes} later, look at {time}.',
  readySooner: 'About {minutes} sooner, ready about {time}.',
  readyLater: 'About {minutes} later, ready about {time}.',
} as const);
