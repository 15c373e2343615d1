import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { PlannedTouch } from '../../core/day/plan/types.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { bowlClocks, recipeBowls } from '../../core/kitchen/split-bowls.ts';
import { live } from '../../core/speech/words/live.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellClocks } from '../../core/speech/in-bowls.ts';
import type { Instant } from '../../core/units.ts';

/** Touches at which hands go from bowl to bowl, by the plan's names. */
const BOWL_BY_BOWL = /^(mix|salt and water|fold \d+|lamination|divide)$/;

/**
 * How much later than a touch the other bowls of its dough are, and when; null where one
 * bowl takes it, or its bowls are behind it.
 */
export function bowlTouch(
  { bakes }: Pick<DayAsk, 'bakes'>,
  { batch, name, at }: Pick<PlannedTouch, 'batch' | 'name' | 'at'>,
  equipment: Pick<Equipment, 'bowls'>,
  time: (at: Instant) => string,
): string | null {
  const bake = bakes.find((one) => one.name === batch);
  if (!bake || !BOWL_BY_BOWL.test(name)) return null;
  const bowls = recipeBowls(bake.recipe, equipment);
  const clocks = bowlClocks(at, bowls);
  return tellClocks(bowls.length, (bowl) => time(clocks[bowl]!))?.shown ?? null;
}

/** Of the touch that comes next: 'Fold 1. Bowl 2: 6 min later, at 14:36.' Null as above, or where none comes. */
export function nextBowlsOf(
  ask: Pick<DayAsk, 'bakes'>,
  next: PlannedTouch | undefined,
  nameOf: (touch: PlannedTouch) => string,
  equipment: Pick<Equipment, 'bowls'>,
  time: (at: Instant) => string,
): string | null {
  if (next === undefined) return null;
  const line = bowlTouch(ask, next, equipment, time);
  return line === null ? null : fill(live.nextBowls, { touch: nameOf(next), bowls: line });
}
