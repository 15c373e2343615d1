import { judgeFact } from '../../machines/kitchen/judge-fact.ts';
import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import type { WaitModel } from '../../machines/kitchen/results.ts';
import type { StarterModel } from '../../machines/kitchen/starter-result.ts';
import type { Stepped } from '../../machines/kitchen/step.ts';
import type { Fact } from '../core/records/fact.ts';
import type { Position } from '../core/records/position.ts';
import type { Metres } from '../core/oven/boiling.ts';
import { starterWait } from '../core/day/starter-wait.ts';
import { waitFor } from '../core/day/waits.ts';

/** A fact that was taken, with what the models said of it and where it led. */
export interface Judged {
  readonly fact: Fact;
  readonly stepped: Stepped;
  readonly position: Position;
}

/** `height`: of the kitchen above the sea. Null where nothing takes the fact: nothing is to be written. */
export type Judge = (
  kitchen: Kitchen,
  machines: Machines,
  bare: Fact,
  height?: Metres,
) => Judged | null;

/** Facts judged by these models. */
export const judgeBy =
  (wait: WaitModel, starter: StarterModel): Judge =>
  (kitchen, machines, bare, height) => {
    const judged = judgeFact(kitchen, machines, bare, wait, starter, height);
    return judged && { ...judged, position: positionOf(judged.stepped.kitchen) };
  };

/** By our own. It comes after the first paint; the first press waits for it. */
export const judge: Judge = judgeBy(waitFor, starterWait);
