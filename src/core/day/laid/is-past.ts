import { HOUR, type Instant } from '../../units.ts';
import type { DayPlan } from './day-plan.ts';

/** Bread may be this much later than planned before its plan is a thing of the past. Judgement. */
const LATE = 12 * HOUR;

/** Whether all of a plan's bread was wanted long ago. */
export const isPast = ({ ready }: Pick<DayPlan, 'ready'>, now: Instant): boolean =>
  ready.every(({ at }) => at + LATE < now);
