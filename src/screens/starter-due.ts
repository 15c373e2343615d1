import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { starterCalls } from '../../machines/kitchen/starter.ts';
import { isBaking } from './is-baking.ts';

/** Whether the starter's reminder is told in a sentence of its own: it lies over no running bake. */
export const starterIsTold = (kitchen: Kitchen): boolean =>
  starterCalls(kitchen).length > 0 && !isBaking(kitchen);

/** Whether it stands beside a running bake, as a press: what makes no sound waits till the bake is over. */
export const starterIsBeside = (kitchen: Kitchen): boolean =>
  isBaking(kitchen) && starterCalls(kitchen).some(({ quiet }) => !quiet);
