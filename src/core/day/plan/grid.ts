import type { Instant, Minutes } from '../../units.ts';

/** One slot of the plan in ms: five minutes, counted from the epoch. */
export const SLOT = 300_000;
const SLOT_MINUTES: Minutes = 5;

const finite = (at: Instant): Instant => {
  if (!Number.isFinite(at)) throw new Error(`An instant must be a number of ms, not ${at}.`);
  return at;
};

/** Slot that begins at an instant or next after it. */
export const slotUp = (at: Instant): number => Math.ceil(finite(at) / SLOT);
/** Slot that an instant lies in. */
export const slotDown = (at: Instant): number => Math.floor(finite(at) / SLOT);

/**
 * Minutes as slots.
 *
 * @throws Error `bulk: min must be 0 or more minutes in fives, not x.`
 */
export function slotsIn(minutes: Minutes, what: string): number {
  if (!(minutes >= 0 && minutes % SLOT_MINUTES === 0))
    throw new Error(`${what} must be 0 or more minutes in fives, not ${minutes}.`);
  return minutes / SLOT_MINUTES;
}

export const minutesOf = (slots: number): Minutes => slots * SLOT_MINUTES;
