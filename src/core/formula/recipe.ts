import type { Grams } from '../units.ts';
import type { Formula, Process } from './formula.ts';
import type { Notice } from './notice.ts';

/** One line to put on the scale. `division` is the scale step the grams were rounded to. */
export interface WeighLine {
  readonly item: string;
  readonly name: string;
  readonly grams: Grams;
  readonly division: Grams;
}

/** The four times a baker stands at the scale. */
export type WeighList = 'feed' | 'first' | 'second' | 'filling';

/**
 * A formula scaled for one bake: everything a baker weighs, rounded for the scale.
 * Pinned whole in the bake's first fact, so that no later change of arithmetic alters it.
 */
export interface Recipe {
  readonly formula: Formula;
  readonly loaves: number;
  readonly piece: Grams;
  readonly lines: Readonly<Record<WeighList, readonly WeighLine[]>>;
  /** Starter to keep back before mixing, g. */
  readonly keepBack: Grams;
  /** Dough before division, g. */
  readonly dough: Grams;
  /** The formula's process, with the bake's minutes fitted to this piece. */
  readonly process: Process;
  /** Of a bake begun before fillings were ticked one by one: all of them are in with one press. */
  readonly fillingAtOnce?: true;
  /** What is unusual about it; a baker may go on all the same. */
  readonly warnings: readonly Notice[];
}
