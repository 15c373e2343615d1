import type { Kitchen } from '../../machines/kitchen/kitchen.ts';

/** Whether a bake is under way: what is to be told lies over none, it stands beside it. */
export const isBaking = ({ bakes }: Kitchen): boolean => Object.keys(bakes).length > 0;
