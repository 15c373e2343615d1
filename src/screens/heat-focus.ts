import { deadlineOf } from '../../machines/kitchen/dues.ts';
import type { Kitchen, LaneSnapshot, OvenSnapshot } from '../../machines/kitchen/kitchen.ts';
import { metaOf, stageOf } from '../../machines/kitchen/stage-of.ts';

/** The oven or a lane of it, by name. */
export interface Heat {
  readonly who: string;
  readonly machine: OvenSnapshot | LaneSnapshot;
}

/** Every lane of the oven, in the order they were loaded. */
export const lanesIn = ({ lanes }: Kitchen): Heat[] =>
  Object.entries(lanes).map(([who, machine]) => ({ who, machine }));

const since = ({ machine }: Heat): number => machine.context.entered[stageOf(machine)] ?? 0;

/**
 * What hands are wanted for first: a lid or steam that has to go, what is out of the oven or looked
 * at, what is to go in; then whatever is waited for soonest.
 */
const rank = ({ who, machine }: Heat): number => {
  const stage = stageOf(machine);
  if (stage === 'lift' || stage === 'vent') return 0;
  if (stage === 'judge' || stage === 'unload') return 1;
  if (who === 'oven' && metaOf(machine).waits === undefined && stage !== 'baking') return 2;
  return deadlineOf(machine) === null ? 4 : 3;
};

const order = (heat: Heat): number =>
  rank(heat) === 3 ? (deadlineOf(heat.machine) ?? 0) : since(heat);

/** Of the oven and its lanes the one whose act comes first: the longest due, the soonest over. */
export const firstOf = (heats: readonly Heat[]): Heat | undefined =>
  heats.toSorted((a, b) => rank(a) - rank(b) || order(a) - order(b))[0];
