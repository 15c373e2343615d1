import type { Hazard, ListName } from '../src/core/records/stage.ts';
import type { CallKind } from './ports.ts';

/** What the world needs to know of a stage. */
export interface StageMeta {
  /** The mark this stage waits for; its instant is the stage's deadline. */
  readonly waits?: string;
  /** The mark that tells beforehand of a retard's counter: nothing falls due by it. */
  readonly foretells?: string;
  /** How the stage calls the baker when time, not a press, led into it. */
  readonly call?: CallKind;
  readonly hazard?: Hazard;
  readonly list?: ListName;
}

/** Entering a stage says its sentence; that is the only effect a machine has. */
export interface SayEffect {
  readonly do: 'say';
  readonly stage: string;
}

/** The two actions of every entry, as xstate wants them: note the entry, say the sentence. */
export const entering = <S extends string>(stage: S) =>
  [
    { type: 'enter', params: { stage } },
    { type: 'effect', params: { do: 'say', stage } },
  ] as const;
