import { bowlsFor } from '../../kitchen/bowls.ts';
import { DAY, type Instant } from '../../units.ts';
import { expandFormula } from '../plan/expand.ts';
import { SLOT, slotDown } from '../plan/grid.ts';
import type { Batch, PlanInput, Span, Step } from '../plan/types.ts';
import { expandWeekly } from '../plan/wall-clock.ts';
import { kitchenFor, type AskWorld } from './ask-world.ts';
import { troublesOf, type AskTrouble } from './ask-trouble.ts';
import type { AskedBake, DayAsk } from './day-plan.ts';
import { withChange } from './take-change.ts';
import { unplannedUse } from './unplanned.ts';

export type AskInput =
  | { readonly input: PlanInput; readonly troubles: readonly [] }
  | { readonly input: null; readonly troubles: readonly AskTrouble[] };

/** Windows of the week are laid out so far past the last hour asked for: bread may come later. Judgement. */
const BEYOND = 6 * DAY;

/** The last instant that counts: of bread that is wanted as soon as is good, days after its start. */
const lastOf = ({ bakes }: DayAsk, now: Instant): Instant =>
  Math.max(now, ...bakes.map(({ due, startAt }) => due ?? startAt ?? now)) + BEYOND;

const touchesOf = (steps: readonly Step[]): Set<string> =>
  new Set(
    steps.flatMap(({ name, during = [], beforeNext }) => [
      name,
      ...during.map((side) => side.name),
      ...(beforeNext ? [beforeNext.name] : []),
    ]),
  );

function batchOf(ask: DayAsk, bake: AskedBake, { now, equipment }: AskWorld): Batch {
  const { recipe, name, due, startAt } = bake;
  const bowls = bowlsFor(recipe.dough, equipment.bowls);
  const steps = expandFormula(recipe, kitchenFor(ask, bake, equipment), ask.belief).map((step) =>
    step.uses?.bowls === undefined ? step : { ...step, uses: { ...step.uses, bowls } },
  );
  const known = touchesOf(steps);
  const pins = Object.entries(bake.pins).filter(([touch]) => known.has(touch));
  return {
    name,
    loaves: recipe.loaves,
    steps,
    due,
    ...(startAt === null ? {} : { startAt: Math.max(startAt, now) }),
    fixed: Object.fromEntries(pins.map(([touch, at]) => [touch, slotDown(at) * SLOT])),
  };
}

/** When nobody's hands are there: the week's windows by the wall's calendar, and what was said besides. */
function blockedOf(ask: DayAsk, { now, zone, week, ahead = 0 }: AskWorld): Span[] {
  const onWall = { from: now - ahead, to: lastOf(ask, now) - ahead, zone };
  const weekly = expandWeekly(week, onWall).map((span) => ({
    ...span,
    from: span.from + ahead,
    to: span.to + ahead,
  }));
  return [...weekly, ...ask.away.filter(({ from, to }) => to > from)].sort(
    (a, b) => a.from - b.from,
  );
}

/** Whether spans leave no instant of a stretch free. */
function covers(spans: readonly Span[], from: Instant, to: Instant): boolean {
  let at = from;
  for (const span of spans) {
    if (span.from > at) return false;
    at = Math.max(at, span.to);
  }
  return at >= to;
}

/**
 * What is asked of a day as the planner's question: recipes as steps, the week by the calendar, pins as
 * fixed touches, changes that were agreed to taken; bakes that run besides keep their hands and the oven.
 * What no plan could mend is told instead, each with
 * its key; every one stands by itself.
 */
export function askInput(ask: DayAsk, world: AskWorld): AskInput {
  const blocked = blockedOf(ask, world);
  const hasNoHour = covers(blocked, world.now, lastOf(ask, world.now));
  const troubles = [
    ...troublesOf(ask, world),
    ...(hasNoHour ? [{ key: 'neverFree' } as const] : []),
  ];
  if (troubles.length > 0) return { input: null, troubles };
  const kitchen = kitchenFor(ask, ask.bakes[0]!, world.equipment);
  const { hands, oven } = unplannedUse(ask, world, blocked);
  const input: PlanInput = {
    planFrom: world.now,
    now: world.now,
    timeZone: world.zone,
    blocked: [...blocked, ...hands].sort((a, b) => a.from - b.from),
    ratherNot: [],
    ...(oven.length > 0 ? { ovenBusy: [...oven] } : {}),
    kitchen,
    batches: ask.bakes.map((bake) => batchOf(ask, bake, world)),
  };
  return { input: (ask.taken ?? []).reduce(withChange, input), troubles: [] };
}
