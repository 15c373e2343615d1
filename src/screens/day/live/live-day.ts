import type { Laid, Trouble } from '../../../core/day/laid/came-up.ts';
import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { Anew, LiveAnswer, LiveAsk } from '../../../core/day/laid/live-question.ts';
import type { Change } from '../../../core/day/plan/types.ts';
import { runningWorldOf } from '../../ask-world.ts';
import type { House } from '../../house.ts';

/**
 * Asks about a plan that runs, aside from the page: to make a question of it takes longer than a frame
 * too. One that a newer question stops is never answered.
 */
async function askLive<Kind extends LiveAsk['kind']>(
  house: House,
  plan: DayPlan,
  asks: LiveAsk & { readonly kind: Kind },
): Promise<Extract<LiveAnswer, { kind: Kind }>> {
  const planner = await house.planner();
  const world = runningWorldOf(house);
  return new Promise((resolve) => {
    planner.layLive({ plan, world, asks }, (answer) =>
      resolve(answer as Extract<LiveAnswer, { kind: Kind }>),
    );
  });
}

/** The plan that stands, asked anew in the kitchen as it is. */
export const askAnew = async (house: House, plan: DayPlan): Promise<Anew> =>
  (await askLive(house, plan, { kind: 'anew' })).anew;

/** The plan with a change that would do; null where it does not any more. */
export const withChange = async (
  house: House,
  plan: DayPlan,
  change: Change,
): Promise<DayPlan | null> => (await askLive(house, plan, { kind: 'change', change })).plan;

/** One plan and one fallback for what came up. */
export const waysOut = async (
  house: House,
  plan: DayPlan,
  trouble: Trouble,
): Promise<readonly Laid[]> => (await askLive(house, plan, { kind: 'trouble', trouble })).ways;
