import { inTongue } from '../tongue.ts';

/** A dough that is too much for one bowl: each bowl's share, and its clock. */
export const bowlShares = inTongue('bowls', 'bowlShares', {
  /** Beside a dough's weight. */
  each: '{bowls} bowls, {grams} each.',
  /** Where a step of the scale makes them differ. */
  about: '{bowls} bowls, about {grams} each.',
} as const);

/** How much later than the first another is: each bowl has its own clock. The hour is shown, not said. */
export const bowlClock = inTongue('bowls', 'bowlClock', {
  later: 'Bowl {bowl}: {minutes} later.',
  at: 'Bowl {bowl}: {minutes} later, at {time}.',
} as const);

/** A weigh card where one line goes into several bowls. */
export const bowlWeigh = inTongue('bowls', 'bowlWeigh', {
  first: 'Into {bowls} bowls. Zero the scale for each.',
  second: 'Over {bowls} doughs. Zero the scale for each.',
  spoken: '{grams} of {name}. In each of {bowls} bowls.',
  /** {grams} is one step of the scale. */
  more: 'Put {grams} more in bowl {bowl}.',
} as const);

/** The Book's page and the sheet on paper. */
export const bowlPage = inTongue('bowls', 'bowlPage', {
  press: 'Bowl by bowl',
  title: 'Bowl by bowl',
  line: 'To weigh',
  bowl: 'Bowl {bowl}',
  each: 'Bowls',
  all: 'All of it',
  together: 'Together',
  needs: '{grams} {name}: {shares}',
} as const);
