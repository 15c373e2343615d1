import type { BakeStage, OvenStage } from '../records/stage.ts';
import type { Task } from '../records/task.ts';
import { small1012 } from '../speech/words/small-10-12.ts';
import { small46 } from '../speech/words/small-4-6.ts';
import { small79 } from '../speech/words/small-7-9.ts';
import type { Ages } from './ages.ts';

/** A step as a child meets it: a stage, or a task of its wait in its place. */
export type SmallStep = BakeStage | OvenStage | Task;

/** What a child is told of a step: shown, and spoken at the slower pace. */
export interface SmallWords {
  /** What is done here, by whoever does it: at most five words, verb first. */
  readonly act: string;
  /** One sentence about it, at a reading grade of 3 at most. */
  readonly say: string;
  /** What the child does meanwhile, or itself: a deed, never an order to wait. */
  readonly task: string;
  /** Once it is done: what was done, never how clever. */
  readonly praise: string;
}

const OF_AGES: Readonly<Record<Ages, Readonly<Record<SmallStep, SmallWords>>>> = {
  '4-6': small46,
  '7-9': small79,
  '10-12': small1012,
};

export const smallWords = (ages: Ages, step: SmallStep): SmallWords => OF_AGES[ages][step];
