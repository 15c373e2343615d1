import { inTongue } from '../tongue.ts';

/** Dough and loads of a bake day. Shown, never said. */
export const doughPage = inTongue('circle-dough', 'doughPage', {
  title: 'Dough and loads',
  detail: '{date}: {loaves}.',
  none: 'Nobody has ordered for that day yet.',
  bread: 'Bread',
  loaves: 'Loaves',
  piece: 'Piece',
  loads: 'Loads',
  /** Of a bread that is wanted by its weight. */
  sized: '{name}, {grams}',
  troubles: 'What cannot be baked',
  trouble: '{name}: {words}',
  breadGone: '{loaves} ordered, but it is off the Book’s list.',
  nowhere: '{name}: nothing in this kitchen can bake it.',
  bowls: 'Bowl by bowl',
  levain: 'Levain',
  hours: 'Loads',
  slab: 'Plan the day',
  then: 'on the clock',
  /** One dough after the other. */
  next: 'Next dough, {step} of {steps}',
} as const);

/** One dough in its bowls, and what goes into which bread later. */
export const doughBowls = inTongue('circle-dough', 'doughBowls', {
  one: 'One bowl, {grams}',
  of: 'For {name}.',
  together: 'Mixed as one here. On the Day each bread is a bake of its own.',
  later: 'Goes in once it is out of the bowl',
  filling: '{name}, {loaves}',
} as const);

export const doughLevain = inTongue('circle-dough', 'doughLevain', {
  title: 'Build {grams} of levain',
  detail: '{grams} go into the dough, {keepBack} stay for the next.',
  line: 'To weigh',
  grams: 'One jar',
  feed: 'Feed for {name}: {time}, {ratio}.',
  feedPlain: 'Feed for {name}: {time}.',
  noPlan: 'Plan the day to see when to feed it.',
} as const);

export const doughLoads = inTongue('circle-dough', 'doughLoads', {
  title: '{loads} loads, {minutes}',
  /** The oven's hours are said. */
  at: 'First in at {time}, last out at {until}.',
  counted: 'Counted from the first one in.',
  bread: 'Bread',
  loads: 'Loads',
  first: 'First in',
  out: 'Last out',
  cool: 'Cool',
  start: 'at once',
} as const);

/** What is to be known before a day is laid. */
export const layAsk = inTongue('circle-dough', 'layAsk', {
  many: 'The Day takes {most} at once',
  manyDetail: 'Those fetched first are planned. Left out: {name}.',
  manyYes: 'Plan these',
  stands: 'There is a plan already',
  standsDetail: 'Take the new one, and it replaces the old.',
  standsYes: 'Go on',
  rules: 'Look up the rules first',
  rulesDetail: 'Home sale has local rules for {filling}. Have you looked them up?',
  rulesCare: 'Your local authority tells you what they are.',
  rulesYes: 'Looked up',
  notYet: 'Not yet, go on',
} as const);
