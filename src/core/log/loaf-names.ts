/** What a loaf may have come by. `well`: nothing is to be changed. `short`: just short of its rise. */
export const LOAF_CAUSES = [
  'under',
  'short',
  'over',
  'cutHot',
  'notBaked',
  'skin',
  'benchFlour',
  'ovenLow',
  'ovenHot',
  'wetFilling',
  'well',
] as const;
export type LoafCause = (typeof LOAF_CAUSES)[number];

/**
 * What is looked at in a cut loaf and what it may show. `tight` of a base: dense or gummy along the
 * bottom. `byFilling`: gaps round the filling. `burst`: at the side.
 */
export const LOAF_SIGNS = {
  holes: ['none', 'underCrust', 'throughout', 'byFilling'],
  crumb: ['even', 'tight', 'bigHoles', 'gummy', 'streaks'],
  spread: ['tall', 'spread', 'burst'],
  base: ['even', 'tight', 'dark'],
  crust: ['golden', 'pale', 'dark'],
  sour: ['no', 'sour'],
} as const;
export type LoafSign = keyof typeof LOAF_SIGNS;
export type Shown<S extends LoafSign = LoafSign> = (typeof LOAF_SIGNS)[S][number];

/** Signs in the order they stand above, which breaks a tie between two worth asking. */
export const SIGN_NAMES = Object.keys(LOAF_SIGNS) as readonly LoafSign[];

/** How sure: only `likely` and `mayBe` are a ground to change anything. */
export const HOW_SURE = ['likely', 'mayBe', 'hard'] as const;
export type HowSure = (typeof HOW_SURE)[number];

/** `well`: nothing to change. `look`: too little was seen; nothing is named. */
export const LOAF_SAYS = ['well', 'causes', 'look'] as const;

/** What of the day may speak for a cause. */
export const DAY_FACTS = [
  'rise',
  'proof',
  'dough',
  'poke',
  'core',
  'crust',
  'baked',
  'cooled',
] as const;
export type DayFact = (typeof DAY_FACTS)[number];

/** One thing to change; its words are in `speech/words/cut-loaf.ts`. */
export const LOAF_CHANGES = [
  'warmerDough',
  'longerBulk',
  'longerProof',
  'shorterBulk',
  'coolerDough',
  'shorterCold',
  'coolLonger',
  'bakeLonger',
  'tighterSkin',
  'coverSkin',
  'lessFlour',
  'hotterOven',
  'coolerOven',
  'trayBelow',
  'drierFilling',
] as const;
export type LoafChange = (typeof LOAF_CHANGES)[number];

/** What was answered of the cut loaf. `unsure` is an answer: it is not asked again and says nothing. */
export type LoafAnswers = { readonly [S in LoafSign]?: Shown<S> | 'unsure' };
