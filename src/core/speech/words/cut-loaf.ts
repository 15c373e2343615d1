import { inTongue } from '../tongue.ts';
import type {
  DayFact,
  HowSure,
  LOAF_SAYS,
  LOAF_SIGNS,
  LoafChange,
  LoafSign,
} from '../../log/loaf-names.ts';

/** What is asked of a cut loaf, one sign at a time; the words of the causes are in `causes.ts`. */
export const cutLoaf = inTongue('cut-loaf', 'cutLoaf', {
  crumb: {
    ask: 'Look at the crumb',
    shown: {
      even: 'Even',
      tight: 'Tight',
      bigHoles: 'Few big holes',
      gummy: 'Gummy',
      streaks: 'Streaks',
    },
  },
  base: {
    ask: 'Look along the base',
    shown: { even: 'Like the rest', tight: 'Tight or gummy', dark: 'Very dark' },
  },
  holes: {
    ask: 'Look where holes are',
    shown: {
      none: 'None that stand out',
      underCrust: 'Under the crust',
      throughout: 'All through',
      byFilling: 'Round the filling',
    },
  },
  crust: { ask: 'Look at the crust', shown: { golden: 'Golden', pale: 'Pale', dark: 'Dark' } },
  spread: {
    ask: 'Look at its shape',
    shown: { tall: 'Tall', spread: 'Spread out', burst: 'Burst at the side' },
  },
  sour: { ask: 'Smell the crumb', shown: { no: 'Not very sour', sour: 'Sour' } },
} as const satisfies {
  readonly [S in LoafSign]: {
    readonly ask: string;
    readonly shown: Readonly<Record<(typeof LOAF_SIGNS)[S][number], string>>;
  };
});

const cutLoafUnsure = 'Not sure';

/** Said before a cause. */
export const howSure: Readonly<Record<HowSure, string>> = inTongue('cut-loaf', 'howSure', {
  likely: 'Likely',
  mayBe: 'May be',
  hard: 'Hard to say',
});

export const cutLoafSays: Readonly<
  Record<(typeof LOAF_SAYS)[number] | 'oneSign' | 'done', string>
> = inTongue('cut-loaf', 'cutLoafSays', {
  well: 'A fine loaf. Keep it as it is.',
  causes: 'Change one thing, then look again.',
  look: 'Too little to go by yet.',
  oneSign: 'One sign is not enough. Look at one more.',
  done: 'Hard to say. Bake it the same way and look again.',
});

/** The one thing to change. Common practice, no source. */
export const loafChanges: Readonly<Record<LoafChange, string>> = inTongue(
  'cut-loaf',
  'loafChanges',
  {
    warmerDough: 'Start with a warmer dough.',
    longerBulk: 'Let the bulk go on a little longer.',
    longerProof: 'Let the shaped loaf rise a little longer.',
    shorterBulk: 'End the bulk a little sooner.',
    coolerDough: 'Start with a cooler dough.',
    shorterCold: 'Leave it in the cold for less time.',
    coolLonger: 'Let it cool for two hours before you cut it.',
    bakeLonger: 'Bake it five to ten minutes longer.',
    tighterSkin: 'Shape it a little tighter.',
    coverSkin: 'Keep the loaf covered, so its skin stays soft.',
    lessFlour: 'Use less flour on the bench.',
    hotterOven: 'Heat the oven for longer.',
    coolerOven: 'Set the oven a little lower.',
    trayBelow: 'Put a tray on the shelf below.',
    drierFilling: 'Drain and dry the filling well.',
  },
);

/** What of the day speaks for it. */
export const dayFacts: Readonly<Record<DayFact, string>> = inTongue('cut-loaf', 'dayFacts', {
  rise: 'the rise at the end of the bulk',
  proof: 'the rise of the shaped loaf',
  dough: 'how warm the dough was',
  poke: 'the dent',
  core: 'the heat of its core',
  crust: 'its crust at the oven',
  baked: 'its time in the oven',
  cooled: 'how long it cooled',
});

/** The page a cut loaf is read on. */
export const cutPage = inTongue('cut-loaf', 'cutPage', {
  title: 'Cut loaf',
  well: 'A fine loaf',
  keepIt: 'Keep it as it is.',
  hard: 'Hard to say',
  perhaps: 'Perhaps {name}, or {other}.',
  look: 'Too little to go by',
  same: 'Bake it the same way and look again.',
  cause: '{value}: {name}',
  also: 'Perhaps {name}',
  change: 'Next time',
  because: 'That day agrees: {lines}.',
  keep: 'Keep it',
  keepThen: 'in this bake’s record',
  kept: 'Looked at on {date}',
  todo: 'What to do',
  todoTitle: 'What to do about it',
  before: 'The answer before',
  again: 'Look again',
  back: 'Back to the loaf',
  /** The house does not take it: another window holds the kitchen. */
  refused: 'It was not kept. Try once more.',
} as const);

/** Of these, what is said by itself. */
export const cutLoafLines = inTongue('cut-loaf', 'cutLoafLines', {
  cutLoafUnsure,
});
