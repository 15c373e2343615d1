import { bowlsFor } from '../../kitchen/bowls.ts';
import type { Recipe } from '../../formula/recipe.ts';
import type { Equipment } from '../../kitchen/equipment.ts';
import { placesFor } from '../../kitchen/places.ts';
import type { Instant } from '../../units.ts';
import type { Kitchen } from '../plan/types.ts';
import type { WeeklyWindow } from '../plan/wall-clock.ts';
import type { LiveKitchen } from './at-touch.ts';
import type { AskedBake, DayAsk } from './day-plan.ts';

/** What of the kitchen a plan may depend on. */
export type PlannedWith = Pick<Equipment, 'oven' | 'pots' | 'tins' | 'stones' | 'fridge' | 'bowls'>;

/** A bake that has begun. */
export interface RunningBake {
  readonly bake: string;
  readonly recipe: Recipe;
  readonly loaves: readonly string[];
}

/** What runs, and where it stands. */
export interface RunningKitchen {
  readonly places: LiveKitchen;
  readonly bakes: readonly RunningBake[];
}

/** Around an ask: what the clock says and the kitchen holds. */
export interface AskWorld {
  /** Kitchen time, as every instant of a plan. */
  readonly now: Instant;
  /** IANA name. */
  readonly zone: string;
  /** Milliseconds by which kitchen time is ahead of the wall; 0 but where the clock was set back. */
  readonly ahead?: number;
  readonly week: readonly WeeklyWindow[];
  readonly equipment: PlannedWith;
  /** The kitchen as it stands; left out, nothing runs in it. What is not in the ask keeps hands and oven. */
  readonly running?: RunningKitchen;
}

/** The kitchen as it is for one bake; of what nobody said how much there is, there is enough. */
export function kitchenFor(
  ask: DayAsk,
  { recipe }: Pick<AskedBake, 'recipe'>,
  { oven, fridge, bowls, ...rest }: PlannedWith,
): Kitchen {
  const loaves = ask.bakes.reduce((sum, bake) => sum + bake.recipe.loaves, 0);
  const needed = ask.bakes.reduce((sum, bake) => sum + bowlsFor(bake.recipe.dough, bowls), 0);
  return {
    fridgePlaces: fridge.holds ?? loaves,
    bowls: bowls.count ?? needed,
    pots: Math.max(1, placesFor(rest, recipe.process.vessel, recipe.piece)),
    temperatureC: ask.kitchen,
    ...(oven.timer === null ? {} : { ovenTimer: oven.timer }),
  };
}
