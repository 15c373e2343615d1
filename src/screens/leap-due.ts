import type { House, Leaps } from './house.ts';
import { isBaking } from './is-baking.ts';

/** The leap of the clock that is to be told or asked about, the question first; null: none. */
export const leapDue = ({ holds, leaps }: House): keyof Leaps | null => {
  const { back, ahead } = leaps();
  if (!holds) return null;
  if (ahead?.inSight) return 'ahead';
  return back === null ? null : 'back';
};

/** Whether it is told in a sentence of its own: it lies over no running bake. */
export const leapIsTold = (house: House): boolean =>
  leapDue(house) !== null && !isBaking(house.kitchen());

/** Whether it stands beside a running bake, as a press. */
export const leapIsBeside = (house: House): boolean =>
  leapDue(house) !== null && isBaking(house.kitchen());
