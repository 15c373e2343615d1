import type { Fact } from '../../src/core/records/fact.ts';
import type { Kitchen } from './kitchen.ts';

/** A call is put off no longer once it rings again or its act is done: there is nothing to take back. */
const isPutOff = ({ attention }: Kitchen, fact: Fact): boolean =>
  fact.kind === 'snoozed' && attention.context.snoozed[fact.call]?.until === fact.until;

/** What hands did and may withdraw; what a probe read or an ear heard is not theirs to take back. */
const isCandidate = (fact: Fact): boolean =>
  ['start', 'press', 'timer', 'timerOff', 'starter', 'plan', 'planOff'].includes(fact.kind) ||
  (fact.kind === 'reading' && fact.by === 'hand');

/** The latest standing fact that can be taken back, or null. Strictly last in, first out. */
export const takeBackTarget = (kitchen: Kitchen): Fact | null =>
  kitchen.standing.findLast((fact) => isCandidate(fact) || isPutOff(kitchen, fact)) ?? null;

/** What stands once `target` is withdrawn: nothing takes its corrections any more. */
export const without = (standing: readonly Fact[], target: string): readonly Fact[] =>
  standing.filter(({ id }) => id !== target);
