import { inTongue } from '../tongue.ts';

/** The chart of a past bake: its panels, its labels and its table. */
export const logChart = inTongue('log-chart', 'logChart', {
  heat: 'Warmth, {unit}',
  rise: 'Rise, %',
  speed: 'Starter’s speed, usual is 1',
  lived: 'Hours the dough lived, at {heat}',
  dough: 'Dough',
  kitchen: 'Kitchen',
  levain: 'Levain',
  jar: 'In a jar',
  likely: 'Likely',
  band: '4 of 5 lie here',
  calls: 'Calls',
  /** Of a row that holds all the while. */
  noTime: '–',
  wanted: 'Wanted {percent}',
  odd: '{what}, odd',
  atLeast: '{percent} or more',
  times: '{number} of usual',
  hours: '{number} h',
  between: '{least} to {most}',
  what: {
    jar: 'Rise in a jar',
    speed: 'Starter’s speed',
    lived: 'Dough lived',
    wanted: 'Wanted rise',
    stage: 'Step: {name}',
    call: 'Call: {name}',
  },
  table: { time: 'Time', what: 'What', value: 'Value', between: '4 of 5 lie' },
  /** Said in words that the voice has. */
  says: {
    one: '{name}: {from}.',
    span: '{name}: {from} to {until}.',
    slow: 'The starter is slow.',
    usual: 'The starter is usual.',
    fast: 'The starter is fast.',
    none: 'No reading.',
  },
} as const);
