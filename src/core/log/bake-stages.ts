import type { PlannedTouch } from '../day/plan/types.ts';
import type { Fact } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';
import { planAfter } from '../records/standing-plan.ts';
import type { Instant } from '../units.ts';
import type { BakeRows } from './bake-rows.ts';
import { visitsIn, type Visit } from './visits.ts';

/** One stage of a bake, as it was and as it was meant to be. */
export interface BakeStay extends Visit {
  /** When it was to begin; null: nobody had said. */
  readonly planned: Instant | null;
  /** Who had said so: the day's plan, or the bench at the wait before. */
  readonly plannedBy: 'plan' | 'bench' | null;
}

/** The stage that begins with the hands of a touch, by the plan's name. */
const TOUCHED: Readonly<Record<string, string>> = {
  'levain.feed': 'feed levain',
  'mix.first': 'mix',
  'mix.salt': 'salt and water',
  'shape.divide': 'divide',
  'shape.finalShape': 'shape',
  'shape.scoop': 'spoon',
  'proof.toFridge': 'to fridge',
};

/** Whether a touch begins a stage: bread cools from the last unload on. */
const begins = (
  stage: string,
  { name }: PlannedTouch,
  touches: readonly PlannedTouch[],
): boolean =>
  stage === 'cool.cooling'
    ? name === touches.findLast((one) => one.name.startsWith('unload '))?.name
    : name === TOUCHED[stage];

/** What a wait's end is called among its marks, the likeliest first. */
const ENDS = ['likely', 'end', 'touch', 'look', 'turn'] as const;

/** The touches of the plan that a bake was begun by, as they stood when it began; [] where it had none. */
export function plannedTouches(
  records: readonly LogRecord[],
  withdrawn: ReadonlySet<string>,
  { start }: Pick<BakeRows, 'start'>,
): readonly PlannedTouch[] {
  const { planned } = start;
  if (planned === undefined) return [];
  const plan = records
    .slice(
      0,
      records.findIndex(({ fact }) => fact.id === start.id),
    )
    .filter(({ fact }) => !withdrawn.has(fact.id))
    .reduce<Parameters<typeof planAfter>[0]>((last, { fact }) => planAfter(last, fact), null);
  if (plan?.id !== planned.plan) return [];
  return plan.touches.filter(({ batch }) => batch === planned.name);
}

/** When a wait was to end, as it was told first; null where it is none. */
const foretold = (standing: readonly Fact[], who: string, visit: Visit): Instant | null => {
  for (const { results } of standing) {
    const marks = results?.find(
      (one) => one.who === who && one.stage === visit.stage && one.since === visit.from,
    )?.marks;
    const end = ENDS.find((name) => marks?.[name] !== undefined);
    if (marks !== undefined && end !== undefined) return marks[end]!;
  }
  return null;
};

/**
 * The stages of a bake in the order they came, each with when it was to begin: by its plan's touch of that
 * name, the first time it came; else by the first foretold end of the wait before it.
 */
export function bakeStages(facts: BakeRows, touches: readonly PlannedTouch[]): readonly BakeStay[] {
  const { start, standing, end } = facts;
  const { bake, id } = start;
  const visits = visitsIn(
    facts,
    ({ bakes }) => (bakes[bake]?.start === id ? bakes[bake] : undefined),
    end?.fact.at ?? null,
  );
  return visits.map((visit, n) => {
    const isFirst = visits.findIndex(({ stage }) => stage === visit.stage) === n;
    const touch = touches.find((one) => isFirst && begins(visit.stage, one, touches));
    if (touch) return { ...visit, planned: touch.at, plannedBy: 'plan' };
    const before = visits[n - 1];
    const planned = before === undefined ? null : foretold(standing, bake, before);
    return { ...visit, planned, plannedBy: planned === null ? null : 'bench' };
  });
}
