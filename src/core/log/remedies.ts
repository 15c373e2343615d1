import type { causes } from '../speech/words/causes.ts';
import { remedies } from '../speech/words/remedies.ts';

type Words = typeof remedies;

/** The stages that have remedies, in the order of a bake. */
export type RemedyStage = keyof Words;
/** The signs of a stage. */
export type RemedySign<S extends RemedyStage = RemedyStage> = S extends RemedyStage
  ? keyof Words[S]
  : never;
/** What may lie behind a sign; its words are in `speech/words/causes.ts`. */
export type RemedyCause = keyof typeof causes;

export interface Remedy {
  readonly stage: RemedyStage;
  readonly sign: string;
  /** What usually lies behind it, the most usual first. */
  readonly causes: readonly RemedyCause[];
  readonly words: {
    readonly sign: string;
    /** Null: nothing to do. */
    readonly now: string | null;
    readonly next: string | null;
    /** Said beside what is done now. */
    readonly care?: string;
  };
}

/** What usually lies behind each sign. Common practice, no source. */
const BEHIND: { readonly [S in RemedyStage]: Readonly<Record<keyof Words[S], RemedyCause[]>> } = {
  levain: { slow: ['cold', 'underfed', 'young'], past: ['pastPeak'] },
  mix: {
    soupy: ['miscounted', 'weakFlour'],
    cold: ['flourAndRoom'],
    hot: ['flourAndRoom'],
    noSalt: ['saltLeftOut'],
  },
  folds: { tears: ['tight', 'shortRest'] },
  bulk: { flat: ['under'], ready: ['ready'], fallen: ['over'] },
  sheet: { rips: ['early', 'late', 'drySkin'], wet: ['wetFilling'] },
  divide: { lumpy: ['scraps'] },
  preshape: { splits: ['tightSkin', 'shortRest'], runs: ['slack', 'longRest', 'over'] },
  basket: { stuck: ['littleFlour', 'over', 'damp'] },
  cold: { still: ['under', 'veryCold'], over: ['over', 'warmFridge'] },
  proof: { far: ['forgotten'] },
  oven: {
    burst: ['under', 'weakCut', 'tightSkin', 'drySkin'],
    flat: ['over'],
    black: ['rackLow', 'darkPot'],
    pale: ['ovenLow', 'lidLong', 'over'],
    dark: ['ovenHot', 'bakedLong', 'sweet'],
    leaks: ['nearEdge', 'thinSkin', 'tooMuch'],
  },
  cool: { crackles: ['usual'] },
  cut: {
    gummy: ['notBaked', 'cutHot', 'under'],
    dense: ['under'],
    flyingCrust: ['over', 'weakSkin', 'drySkin', 'under'],
    streaks: ['benchFlour', 'lateSalt'],
  },
  handOver: { soft: ['baggedWarm'] },
};

/** Every row, in the order of a bake. */
export const REMEDIES: readonly Remedy[] = Object.entries(remedies).flatMap(([stage, signs]) =>
  Object.entries(signs as Readonly<Record<string, Remedy['words']>>).map(([sign, words]) => ({
    stage: stage as RemedyStage,
    sign,
    causes: (BEHIND[stage as RemedyStage] as Readonly<Record<string, RemedyCause[]>>)[sign] ?? [],
    words,
  })),
);

/**
 * What to do about a sign at a stage, now and next time. Null: no row for it.
 * Source: common practice, no source.
 *
 * @example
 * remedyFor('cut', 'gummy')?.causes // → ['notBaked', 'cutHot', 'under']
 * remedyFor('cut', 'leaks') // → null
 */
export const remedyFor = (stage: string, sign: string): Remedy | null =>
  REMEDIES.find((row) => row.stage === stage && row.sign === sign) ?? null;
