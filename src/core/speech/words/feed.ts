import { inTongue } from '../tongue.ts';

/** The feed of a levain: when it is ripe, and what to feed for another hour. {ratio} is "1 : 5 : 5". */
export const feed = inTongue('feed', 'feed', {
  ripe: 'ripe about then',
  ratio: 'fed {ratio}',
  another: 'Other time',
  planned: 'Mixing at another time? Say so before you weigh.',
  spoken: '{line}. Ripe about {time}. Mixing at another time? Say so first.',
  ask: 'When do you want to mix?',
  earlier: 'Earlier',
  later: 'Later',
  much: { earlier: '3 h earlier', later: '3 h later' },
  stands: {
    early: 'Fed {ratio}, it is not ripe by then.',
    fits: 'Fed {ratio}, it is ripe by then.',
    late: 'Fed {ratio}, it is past its best by then.',
  },
  offer: 'Feed it {ratio} for that time:',
  rough: 'So far from the usual that this is a rough guess.',
  none: 'No feed is ripe by then. Choose a later time.',
  guess: 'It goes by {celsius} in the kitchen. Look at it all the same.',
  take: '{grams} starter is in',
} as const);
