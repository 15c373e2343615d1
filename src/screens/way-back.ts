import { createSignal, type Signal } from 'solid-js';
import type { Ages } from '../core/small/ages.ts';
import { MINUTE, type Instant } from '../core/units.ts';
import type { House } from './house.ts';

/** What is done in the baker's view meanwhile, a reading or a task done ahead, takes no longer. Judgement. */
const STANDS = 15 * MINUTE;

interface Left {
  readonly ages: Ages;
  readonly at: Instant;
}

/** By the house, for as long as the page lives; in no fact. */
const all = new WeakMap<House, Signal<Left | null>>();
const of = (house: House): Signal<Left | null> => {
  const found = all.get(house) ?? createSignal<Left | null>(null);
  all.set(house, found);
  return found;
};

/** The baker's view for a moment: who helped is known. */
export function toBaker(house: House): void {
  const { small } = house.ways();
  of(house)[1](small === 'off' ? null : { ages: small, at: house.now() });
  house.choose({ small: 'off' });
}

/** Whose view was chosen for good: there is no way back but by choosing again. */
export const forgetLeft = (house: House): void => void of(house)[1](null);

/** The ages to whose view one press leads back; null: none, or it was left a while ago. */
export function agesLeft(house: House): Ages | null {
  const left = of(house)[0]();
  if (left === null || house.ways().small !== 'off') return null;
  return house.now() - left.at < STANDS ? left.ages : null;
}
