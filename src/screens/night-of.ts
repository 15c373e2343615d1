import { USUAL_NIGHT } from '../core/kitchen/quiet-hours.ts';
import type { NightHours } from '../core/records/starter.ts';
import type { House } from './house.ts';

/**
 * The night as a deed carries it, so that its model need not know the tablet's zone. Nobody wants to be
 * reminded of a starter at three: without night hours of the baker's own it is the usual night.
 */
export const nightOf = ({ equipment, now, midnight }: House): { readonly night: NightHours } => ({
  night: { midnight: midnight(now()), ...(equipment().quiet ?? USUAL_NIGHT) },
});
