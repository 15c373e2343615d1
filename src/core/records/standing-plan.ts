import type { DayPlan } from '../day/laid/day-plan.ts';
import type { Fact } from './fact.ts';
import type { LogRecord } from './record.ts';

/** A bake that is begun is known to its plan from then on. */
const begun = (plan: DayPlan, { planned, bake }: Extract<Fact, { kind: 'start' }>): DayPlan =>
  planned?.plan === plan.id
    ? {
        ...plan,
        ask: {
          ...plan.ask,
          bakes: plan.ask.bakes.map((one) => (one.name === planned.name ? { ...one, bake } : one)),
        },
      }
    : plan;

/** The plan that stands after a fact; take-backs and jumps aside. */
export function planAfter(plan: DayPlan | null, fact: Fact): DayPlan | null {
  switch (fact.kind) {
    case 'plan':
      return fact.plan;
    case 'planOff':
      return plan?.id === fact.plan ? null : plan;
    case 'start':
      return plan && begun(plan, fact);
    default:
      return plan;
  }
}

/** The latest plan that stands at the end of a log, its begun bakes in it; what was taken back is left out. */
export function standingPlan(records: readonly LogRecord[]): DayPlan | null {
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  return records.reduce<DayPlan | null>(
    (plan, { fact }) => (withdrawn.has(fact.id) ? plan : planAfter(plan, fact)),
    null,
  );
}
