import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';

/** Whether loaves bake in pots or wait for them: then there are lanes to show. */
export const potsInUse = ({ oven, lanes }: Kitchen): boolean =>
  Object.values(lanes).some(
    ({ context }) => context.vessel === 'pot' && context.loaves.length > 0,
  ) ||
  (stageOf(oven) !== 'off' && oven.context.vessel === 'pot' && oven.context.waiting.length > 0);
