import { inTongue } from '../tongue.ts';
import type { LateReason } from '../../oven/lanes.ts';

/** The page of the pots: each a lane, with its loaves, and the loaves that wait. */
export const potsPage = inTongue('pots-page', 'potsPage', {
  title: 'Pots',
  say: 'Say this chart',
  later: 'Show later',
  back: 'Back to now',
  table: 'As a table',
  chart: 'As a chart',
  queue: 'Loaves that wait',
  aPotIsOut: 'Stop using a pot',
  backToPots: 'Back to the pots',
  none: 'No pot is in use just now.',
  /** The only one there is. */
  one: 'The pot',
  last: 'Last loaf out at {time}. Bag from {until}.',
  spoken: '{time} is when the last loaf is out. {until} is when it may be bagged.',
  /** Into another day, where an hour alone would not say which. */
  spokenLong: '{minutes}, about, until the last loaf is out.',
  now: 'now {time}',
  /** What the marks are, beside them. */
  lid: 'lid off',
  out: 'out',
  more: { one: '1 more until {time}', many: '{count} more until {time}' },
  noMore: 'no more loaves',
  /** What has called and was not done yet. */
  due: { lid: 'lid off now', out: 'look now' },
  reheats: 'hot at {time}',
  dropped: 'out after this loaf',
  alt: 'Pots against time. {count} pots, {loaves} to come out, the last at {time}.',
  loaf: 'Loaf {load}',
  loafOf: '{bake} loaf {load}',
  /** What another pot calls for next, beside the act. */
  next: { lid: '{pot}: lid off {time}', colour: '{pot}: out {time}', hot: '{pot}: hot {time}' },
  nextNow: { lift: '{pot}: lid off now', judge: '{pot}: look now', unload: '{pot}: take out' },
  /** A loaf was looked at and is not ready. */
  slow: 'Loaf {load} is slow. It goes last.',
  columns: { loaf: 'Loaf', load: 'In', lid: 'Lid off', out: 'Out' },
} as const);

export const queuePage = inTongue('pots-page', 'queuePage', {
  title: 'Loaves that wait',
  none: 'No loaf waits. All are in, or out.',
  ask: 'Press a loaf to change its turn.',
  next: 'goes in next',
  at: 'in at {time}',
  first: 'first: in at {time}',
  later: 'slow, last: in at {time}',
  reason: {
    sluggish: 'Slow: it comes last.',
    tooBig: 'It fits only some pots.',
    standsOut: 'It stays out until then.',
  } satisfies Readonly<Record<LateReason, string>>,
  bakeFirst: 'Bake this first',
  leave: 'Leave for later',
  stays: 'Leave it as it is',
  looked: 'A loaf that was checked goes in first. Load it, or take that back.',
} as const);

export const potOutPage = inTongue('pots-page', 'potOutPage', {
  title: 'Which pot is out of use?',
  said: 'A loaf in it bakes on. No other goes in.',
  one: '{pot} is out',
  ask: 'No more loaves in {pot}?',
  yes: 'Yes, no more',
  no: 'No, it stays',
  last: 'This is the last pot. It stays: loaves need it.',
} as const);
