import { inTongue } from '../tongue.ts';

/** The starter between bakes: where it stands, when it was fed, how fast it is. */
const STARTER_CARE = 'Pink or orange streaks, or fuzz: throw it all away, no tasting.';

export const starterWords = inTongue('starter', 'starterWords', {
  title: 'Starter',
  unnamed: 'Your starter',
  unknown: 'Say where it stands, or that you fed it.',
  care: STARTER_CARE,
  loose: 'Cover the jar loosely, never sealed.',
  long: `So long in the cold: look well first. ${STARTER_CARE}`,

  fed: 'Last fed',
  fedValue: '{ratio}, {date} {time}',
  where: 'Where it stands',
  places: { counter: 'On the counter', fridge: 'In the fridge' },
  whereAsk: 'Where does the jar stand?',
  kept: 'Kept back',
  keptAsk: 'How much is kept back?',
  name: 'Its name',
  nameAsk: 'What is it called?',
  names: {
    wheat: 'Wheat starter',
    rye: 'Rye starter',
    wholemeal: 'Whole wheat starter',
    spelt: 'Spelt starter',
    other: 'Second starter',
  },

  ripening: 'Ripe between {time} and {until}.',
  ripe: 'Ripe about {time}. Good until {until}.',
  pastIt: 'It was ripe about {time}. It is hungry: feed it.',
  unfed: 'On the counter, not fed. Feed it by {until}.',
  hungry: 'On the counter, not fed, since {time}. Feed it.',
  fridge: 'In the fridge for {days}. Good there until {date}.',
  fridgeToday: 'In the fridge since {time}. Good there until {date}.',
  fridgeLong: 'In the fridge for {days}: it wants a feed.',
  feedsFirst: {
    one: 'One feed on the counter before a bake.',
    more: '{count} feeds on the counter before a bake.',
  },
  days: { one: 'one day', more: '{count} days' },
  rough: 'A rough guess: it is very warm or cold here.',

  /** On the start page, before a bake that begins with it. */
  before: {
    ripeNow: 'Your starter is ripe: use it by {until}.',
    ripening: 'Your starter is ripe between {time} and {until}.',
    feedFirst: {
      one: 'Your starter wants one feed first.',
      more: 'Your starter wants {count} feeds first.',
    },
    ready: 'Your starter is in the fridge: the levain’s feed wakes it.',
  },

  /** Its reminder: on the notice, beside other calls, and as it follows the call word. */
  due: {
    ripe: 'Your starter should be ripe. Use it, feed it or chill it.',
    unfed: 'Your starter waits for its feed.',
    cold: 'Your starter has been cold for a long time. Feed it this week.',
  },
  see: 'See to it',
  beside: 'look now',
  call: { name: 'Starter', short: 'Starter', subject: 'the starter' },
  chill: 'Into the fridge',
  tomorrow: 'Remind me tomorrow',
  close: 'Not now',

  feed: 'I fed it',
  feedAsk: 'How was it fed?',
  feedDetail: 'By weight: starter, flour, water. Kitchen: {celsius}.',
  feedWarmth: 'Kitchen is not {celsius}',
  warmthAsk: 'How warm is the kitchen?',
  ratio: '1:{flour}:{flour}',
  ripeAbout: '{ratio}, ripe {time}',
  feedSaid: 'Fed. It should be ripe at {time}.',

  speed: 'How fast it is',
  speedUnknown: 'Not known yet',
  speedValue: '{percent} of usual',
  speeds: {
    usual: 'It is as fast as most',
    slower: 'Slower than most, by about {part}',
    faster: 'Faster than most, by about {part}',
  },
  parts: {
    tenth: 'a tenth',
    fifth: 'a fifth',
    quarter: 'a quarter',
    third: 'a third',
    half: 'a half',
  },
  guess: 'Nobody knows its speed yet',
  percent: '{count}\u00a0%',
  speedNumber: 'Its speed: {percent} of usual, likely {least} to {most}.',
  taught: {
    none: 'No bake has taught this yet.',
    one: 'One bake taught this.',
    more: '{count} bakes taught this.',
  },
  strong: 'Is it strong enough?',
  /** On its press, where bigger words have little room. */
  strongPress: 'Is it strong?',
  strongNotFed: 'Feed it first, then look twice.',
  strongFirst: 'Look twice after a feed: one look says too little.',
  strongAgain: 'Look again after {time}: one look is not enough.',
  strongUnclear: 'Not clear: look again',
  strongUnclearWhy: 'What you saw is not enough to tell.',
  /** By the share of the belief that says so. */
  sures: { nearly: 'Nearly sure.', likely: 'Not sure, but likely.' },
  strengths: {
    strong: 'Strong enough',
    once: 'Feed it once more',
    weak: 'Too weak to bake yet',
  },
  strengthThen: {
    strong: 'Use it while it is domed.',
    once: 'Fed {ratio} now: ripe {time}.',
    weak: 'Feed it twice a day, kept warm.',
  },
  seeAsk: 'What do you see?',
  sees: {
    '0': 'Not risen',
    '50': 'By half',
    '100': 'Doubled',
    '200': 'Tripled',
    domed: 'Domed',
    fallen: 'Fallen',
  },
  keyRise: 'Key in its rise',
  keyRiseAsk: 'How far has it risen?',

  renew: 'It’s a new starter',
  renewTitle: 'Forget all about the old one?',
  renewDetail: 'Its speed, feeds and name start anew. The bakes stay.',
  renewHold: 'Hold to forget',
  renewHolding: 'Keep holding',
  renewFirst: 'Tap here first',
  renewSecond: 'Then tap here',
  renewTwo: 'Or two taps, far apart',
  keep: 'Keep it',
} as const);

/** Of these, what is said by itself. */
export const starterLines = inTongue('starter', 'starterLines', {
  STARTER_CARE,
});
