import { DAY, type Instant } from '../units.ts';

/** Days a starter is good for in the fridge before it wants a feed. Common practice, no source. */
export const FRIDGE_DAYS = 14;

/** From this many days in the cold on it is looked at with care before anything else. Judgement. */
export const LONG_DAYS = 28;

/**
 * Days in the fridge from which so many feeds are wanted before a bake's own levain: within a week
 * that levain's feed wakes it. Common practice, no source.
 */
const FEEDS_FROM = [7, FRIDGE_DAYS, LONG_DAYS] as const;

/** Whole days from one instant to another; 0 where the second is not later. */
export const daysBetween = (from: Instant, to: Instant): number =>
  Math.max(0, Math.floor((to - from) / DAY));

/**
 * Feeds on the counter before a bake, for a starter that stood so many whole days in the fridge.
 * Source: common practice, none published.
 *
 * @example
 * feedsAfterCold(10) // → 1
 */
export const feedsAfterCold = (days: number): number =>
  FEEDS_FROM.filter((from) => days >= from).length;
