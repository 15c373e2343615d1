import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { NumberSlot } from '../../../core/records/reading-slot.ts';

/** At a hot oven the core is measured with the rack out: its caution is shown and said. */
export const isHot = ({ oven }: Kitchen, slot: NumberSlot): boolean =>
  slot === 'coreTemperature' && stageOf(oven) !== 'off';
