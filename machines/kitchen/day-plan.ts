import type { Fact } from '../../src/core/records/fact.ts';
import { planFault } from '../../src/core/records/read-plan.ts';
import { planAfter } from '../../src/core/records/standing-plan.ts';
import type { Instant } from '../../src/core/units.ts';
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

/** When the plan that stands has the oven on for a bake; nothing where none has. */
export const plannedOven = (
  { plan }: Kitchen,
  { context }: BakeSnapshot,
): { readonly ovenOn?: Instant } => {
  const name = plan?.ask.bakes.find(({ bake }) => bake === context.id)?.name;
  const touch = plan?.touches.find((one) => one.batch === name && one.name === OVEN_ON);
  return touch === undefined ? {} : { ovenOn: touch.at };
};

/** Waits whose end a plan has a say in: the oven is wanted hot by it. */
const ENDS_AT_OVEN: readonly string[] = ['proof.retard', 'proof.warm', 'proof.soon'];

/** Whether a plan was accepted or given up while a bake waits for the oven: its wait is judged anew. */
export const isReplanned = (kitchen: Kitchen, { kind }: Fact, id: string): boolean => {
  const bake = kitchen.bakes[id];
  const replans = kind === 'plan' || kind === 'planOff';
  return replans && bake !== undefined && ENDS_AT_OVEN.includes(stageOf(bake));
};
