import { MINUTE, type Instant } from '../../src/core/units.ts';
import type { Call } from '../attention/attention.ts';
import type { Kitchen } from './kitchen.ts';
import { metaOf, stageOf } from './stage-of.ts';

/** Whose due it is: the oven's machine has nothing to step. No bake may be named so. */
export const LEFT_ON = 'oven.on';

const STAGE = 'turnOff';
/** An oven that should be off calls again and again, hushed or not, for two hours. Judgement. */
const EVERY = 10 * MINUTE;
const MOST = 12;

/** Since when it is to be off, and how many of its rounds are over; null where it is not. */
const rounds = ({ oven, now }: Kitchen): { since: Instant; over: number } | null => {
  const since = oven.context.entered[STAGE];
  if (stageOf(oven) !== STAGE || since === undefined) return null;
  return { since, over: Math.min(MOST, Math.max(0, Math.floor((now - since) / EVERY))) };
};

/** When it calls next, in the future; null where it does not. */
export const leftOnDue = (kitchen: Kitchen): Instant | null => {
  const found = rounds(kitchen);
  return found === null || found.over >= MOST ? null : found.since + (found.over + 1) * EVERY;
};

/**
 * The call of an oven that is to be off: at once where time led there, ten minutes later where a press
 * did, and every ten minutes from then on as a new call, so that a hush lasts no longer.
 */
export const leftOnCalls = (kitchen: Kitchen): Call[] => {
  const found = rounds(kitchen);
  const { call } = metaOf(kitchen.oven);
  if (found === null || call === undefined) return [];
  if (found.over === 0 && !kitchen.oven.context.byDue) return [];
  const since = found.since + found.over * EVERY;
  return [{ id: `oven:${STAGE}:${since}`, who: 'oven', stage: STAGE, kind: call, since }];
};
