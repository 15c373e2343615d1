import type { NightHours } from '../core/records/starter.ts';
import type { House } from './house.ts';

/** The night as a deed carries it, so that its model need not know the tablet's zone. */
export const nightOf = ({
  equipment,
  now,
  midnight,
}: House): { readonly night: NightHours } | Record<never, never> => {
  const { night } = equipment();
  return night === null ? {} : { night: { midnight: midnight(now()), ...night } };
};
