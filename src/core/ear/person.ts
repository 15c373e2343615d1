import type { HandMark } from '../small/marks.ts';
import type { Frames } from './frames.ts';
import type { EarPhrase } from './phrases.ts';

/**
 * What tells sayings apart. `plain`: the shape of their sound alone, by sums of our own on the cepstrum.
 * `learned`: that, and what a net has learned of speech; it weighs megabytes and comes when it is chosen.
 */
export const EAR_ENGINES = ['plain', 'learned'] as const;
export type EarEngine = (typeof EAR_ENGINES)[number];

/** One saying as numbers; no sound can be made of it again. `learned`: null where that engine was not there. */
export interface Saying {
  readonly plain: Frames;
  readonly learned: Frames | null;
}

/** Each phrase is said so often to be known. */
export const TAKES = 3;

/** Somebody whose voice is known here: a mark stands in for a name. */
export interface EarPerson {
  readonly id: string;
  readonly mark: HandMark;
  readonly child: boolean;
  /** By phrase, each take as it was heard and as it sounds in a louder kitchen. */
  readonly sayings: Readonly<Partial<Record<EarPhrase, readonly Saying[]>>>;
}
