import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { planFault } from '../../src/core/records/read-plan.ts';
import { planAfter } from '../../src/core/records/standing-plan.ts';
import { MINUTE, type Instant } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { stageOf } from './stage-of.ts';
import type { Stepped } from './step.ts';

type Laying = Extract<Fact, { kind: 'plan' | 'planOff' }>;

/** What could not be read back is not written; only the plan that stands can be given up. */
const mayLay = ({ plan }: Kitchen, fact: Laying): boolean =>
  fact.kind === 'plan' ? planFault(fact.plan) === null : fact.plan === plan?.id;

/** A plan is kept, or given up. No machine hears of it: it calls by the results its fact carries. */
export const layDay = (kitchen: Kitchen, fact: Laying): Stepped => {
  if (!mayLay(kitchen, fact)) return { kitchen, taken: false, says: [] };
  return {
    kitchen: { ...kitchen, plan: planAfter(kitchen.plan, fact) },
    taken: true,
    says: [],
  };
};

/** The touch of a plan that turns the oven on. */
const OVEN_ON = 'oven on';

/**
 * Of a bake that finds the oven hot: when its loaf is looked at. The oven goes off with the last loaf
 * that is out unless another waits by then, and a baker may be quicker than the plan: so it is when the
 * last load before it is in.
 */
function hotFrom({ touches }: DayPlan, name: string): Instant | null {
  const load = touches.find((one) => one.batch === name && one.name === 'load 1');
  if (load === undefined) return null;
  const before = touches.findLast(
    (one) => one.batch !== name && one.name.startsWith('load ') && one.at < load.at,
  );
  return before ? before.at + before.hands * MINUTE : null;
}

/** When the plan that stands has the oven on for a bake, or has it on already; nothing where none has. */
export const plannedOven = (
  { plan }: Kitchen,
  { context }: BakeSnapshot,
): { readonly ovenOn?: Instant } => {
  const name = plan?.ask.bakes.find(({ bake }) => bake === context.id)?.name;
  if (plan === null || name === undefined) return {};
  const touch = plan.touches.find((one) => one.batch === name && one.name === OVEN_ON);
  const at = touch ? touch.at : hotFrom(plan, name);
  return at === null ? {} : { ovenOn: at };
};

/** Waits whose end a plan has a say in: the oven is wanted hot by it. */
const ENDS_AT_OVEN: readonly string[] = ['proof.retard', 'proof.warm', 'proof.soon'];

/** Whether a plan was accepted or given up while a bake waits for the oven: its wait is judged anew. */
export const isReplanned = (kitchen: Kitchen, { kind }: Fact, id: string): boolean => {
  const bake = kitchen.bakes[id];
  const replans = kind === 'plan' || kind === 'planOff';
  return replans && bake !== undefined && ENDS_AT_OVEN.includes(stageOf(bake));
};
