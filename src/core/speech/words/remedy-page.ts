import { inTongue } from '../tongue.ts';

/** The page of what can be done about a sign, on a bench and behind a cut loaf. */
export const remedyPage = inTongue('remedy-page', 'remedyPage', {
  open: 'Something is wrong',
  ask: 'What do you see?',
  detail: 'Choose what it looks most like.',
  now: 'Now',
  next: 'Next time',
  nothingNow: 'Nothing to do now.',
  others: 'Other signs',
} as const);
