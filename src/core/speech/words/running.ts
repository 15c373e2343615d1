import { inTongue } from '../tongue.ts';

/** Other bakes beside the one on show. */
export const running = inTongue('running', 'running', {
  title: 'Other bakes',
  line: '{name}: {stage}',
  lineTime: '{name}: {stage}, {time}',
  overdue: '{name}: {stage}, {minutes} over',
  none: 'No other bake.',
  more: 'and {count} more',
} as const);

/** After more than 30 s away. At most three lines; it stays until it is read. */
export const returnCard = inTongue('running', 'returnCard', {
  title: 'While you were away',
  overdue: 'Overdue by {minutes}: {name}',
  nothingOverdue: 'Nothing is overdue.',
  last: 'Last done: {name}, {time}',
  nothingDone: 'Nothing done yet.',
  next: 'Next: {name}, {time}',
  nextNow: 'Now: {name}',
  close: 'I’ve read it',
} as const);

/** The countdown's words, by the name of the mark it runs to; `hot` also by what heats. */
export const countdown: Readonly<
  Record<
    | ('look' | 'touch' | 'turn' | 'end' | 'poke' | 'lid' | 'vent' | 'colour')
    | ('hot' | 'hotPots' | 'hotStone' | 'hotOven'),
    { readonly to: string; readonly past: string; readonly ask: string }
  >
> = inTongue('running', 'countdown', {
  look: {
    to: 'to the next look',
    past: 'past the look',
    ask: '{minutes} to the next look.',
  },
  touch: { to: 'until hands go in', past: 'overdue', ask: '{minutes} until hands go in.' },
  turn: {
    to: 'until you are needed',
    past: 'overdue',
    ask: '{minutes} until you are needed.',
  },
  end: { to: 'to go', past: 'over', ask: '{minutes} to go.' },
  hot: { to: 'until the pot is hot', past: 'past hot', ask: '{minutes} until the pot is hot.' },
  hotPots: {
    to: 'until the pots are hot',
    past: 'past hot',
    ask: '{minutes} until the pots are hot.',
  },
  hotStone: {
    to: 'until the stone is hot',
    past: 'past hot',
    ask: '{minutes} until the stone is hot.',
  },
  hotOven: {
    to: 'until the oven is hot',
    past: 'past hot',
    ask: '{minutes} until the oven is hot.',
  },
  poke: { to: 'to the next check', past: 'past the check', ask: '{minutes} to the next check.' },
  lid: { to: 'until the lid comes off', past: 'past the lid', ask: '{minutes} until lid off.' },
  vent: {
    to: 'until the steam goes out',
    past: 'past the steam',
    ask: '{minutes} until steam out.',
  },
  colour: {
    to: 'to the next look',
    past: 'past the look',
    ask: '{minutes} to the next look.',
  },
});

/** The answer where nothing runs down. */
const nothingRuns = 'No clock runs here. Your hands set the pace.';

/** The ready window: a span with its doubt, never one minute. */
export const readyWindow = inTongue('running', 'readyWindow', {
  now: 'now {time}',
  earliest: 'earliest {time}',
  likely: 'likely {time}',
  latest: 'latest {time}',
  alt: 'Ready between {time} and {until}, most likely {likely}.',
  spoken: 'Between {time} and {until}. Look before you trust it.',
  hours: 'Ready some time from {time} to {until}',
} as const);

/** Of these, what is said by itself. */
export const runningLines = inTongue('running', 'runningLines', {
  nothingRuns,
});
