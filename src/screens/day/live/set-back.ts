import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import { MINUTE } from '../../../core/units.ts';
import type { House } from '../../house.ts';

/** A clock that the network sets right moves by less: nobody's news, ms. Judgement. */
const NEWS = 5 * MINUTE;

/**
 * By how many ms the wall fell behind kitchen time since a plan was last accepted; null: not by anything
 * worth telling. Kitchen time never runs back, so that the plan's instants, and the dough's, stand as they
 * are, and only the hours that are shown of them are others.
 */
export function setBackSince(
  house: Pick<House, 'records' | 'now' | 'wall'>,
  plan: DayPlan,
): number | null {
  const taken = house
    .records()
    .findLast(({ fact }) => fact.kind === 'plan' && fact.plan.id === plan.id)?.fact;
  if (taken === undefined) return null;
  const now = house.now();
  const by = now - house.wall(now) - (taken.at - taken.raw);
  return by > NEWS ? by : null;
}
