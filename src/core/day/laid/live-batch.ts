import { perishableIn } from '../plan/perishable.ts';
import { fives, fivesUp } from '../plan/dough-waits.ts';
import { SLOT, slotUp } from '../plan/grid.ts';
import type { Batch, PlannedTouch, SideTouch, Span, Step, Wait } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';
import { atTouch, type AtTouch, type LiveKitchen } from './at-touch.ts';
import type { AskedBake } from './day-plan.ts';
import { STAYS_ON } from './hot-oven.ts';
import { liveWait, minutesTo, plainWait } from './live-wait.ts';

/** What a running bake is cut by. */
export interface Running {
  readonly asked: AskedBake;
  readonly kitchen: LiveKitchen;
  readonly loaves: readonly string[];
  /** The plan's; null: nobody planned it. */
  readonly touches: readonly PlannedTouch[] | null;
  readonly blocked: readonly Span[];
  readonly now: Instant;
}

/** What is left of a batch, and the touches that are done with: the marker bears the last one's name. */
export interface Cut {
  readonly batch: Batch | null;
  readonly done: readonly string[];
  /** Where it stands; null: it has not begun. */
  readonly at: AtTouch | null;
}

/** Baked and hot while another loaf comes: nobody turns it on again. */
const ON = ['preheating', 'holding', 'poke', 'standing', 'before', 'score', 'load', 'baking'];
/** A baker who is late gets so much more than the first free minute. Judgement. */
const GRACE: Minutes = 30;
/** A hot oven may wait for a cold loaf, for power alone. Judgement. */
const EMPTY: Minutes = 120;

/** Touches inside the wait that are still to come, counted from the marker. */
function sidesLeft(
  during: readonly SideTouch[],
  at: AtTouch,
  touches: readonly PlannedTouch[] | null,
): SideTouch[] {
  // A fold that an accepted plan left out stays out.
  const left = during
    .slice(at.side)
    .filter((side) => touches?.some(({ name }) => name === side.name) ?? true);
  const [next] = left;
  if (next === undefined) return [];
  const before = during[at.side - 1];
  const called = at.marks['touch'];
  const first =
    called === undefined
      ? next.at - (before ? before.at : 0)
      : Math.max(0, minutesTo(at.since, called));
  const shift = fives(first) - next.at;
  return left.map((side) => {
    const moved = side.at + shift;
    return { ...side, at: moved, earlier: Math.min(side.earlier, moved) };
  });
}

/** The first slot from now on at which hands are free. */
function firstFree({ now, blocked }: Pick<Running, 'now' | 'blocked'>, hands: Minutes): Instant {
  let at = slotUp(now) * SLOT;
  for (const span of blocked.toSorted((a, b) => a.from - b.from))
    if (span.from < at + hands * MINUTE && span.to > at) at = slotUp(span.to) * SLOT;
  return at;
}

/** Sides whose time has gone by are due from now on: none is before the present. */
const fromNow = (during: readonly SideTouch[], since: Instant, now: Instant): SideTouch[] => {
  let least = fivesUp(Math.max(0, minutesTo(since, now)));
  return during.map((side) => {
    const late = Math.max(0, least - (side.at + side.later));
    least += side.hands;
    if (late === 0) return side;
    const at = side.at + late;
    return { ...side, at, earlier: Math.min(side.earlier, at), later: side.later + GRACE };
  });
};

/** A wait long enough for the touches inside it and for hands that are late: the baker's way, not the model's. */
function reaching(
  wait: Wait,
  {
    during,
    at,
    next,
    running,
  }: {
    readonly during: readonly SideTouch[];
    readonly at: AtTouch;
    readonly next: Step | undefined;
    readonly running: Running;
  },
): Wait {
  const inside = during.reduce((all, side) => Math.max(all, side.at + side.later + side.hands), 0);
  const free = firstFree(running, next?.hands ?? 0);
  const late = fivesUp(Math.max(0, minutesTo(at.since, free)));
  const overdue = late > wait.max ? late + GRACE : 0;
  const max = Math.max(wait.max, inside, overdue);
  return { ...wait, max };
}

const rigid = (minutes: Minutes): Wait => ({
  min: minutes,
  typicalFrom: minutes,
  typicalTo: minutes,
  max: minutes,
  weightShort: 0,
  weightLong: 0,
});

/** Steps whose touches are promised to the iron stand as far apart as they are promised. */
function promised(
  steps: readonly Step[],
  at: AtTouch,
): { readonly steps: Step[]; readonly fixed: Record<string, Instant> } {
  const fixed: Record<string, Instant> = { ...at.fixed };
  let from = slotUp(at.since);
  const made = steps.map((step, i) => {
    const next = steps[i + 1];
    const stands = i === 0 || fixed[step.name] !== undefined;
    // After a lid that is promised the loaf comes out when its open minutes are over.
    if (stands && next?.name.startsWith('unload ') && fixed[next.name] === undefined) {
      const open = step.hands + ('choices' in step.wait ? 0 : step.wait.min);
      if (fixed[step.name] !== undefined) fixed[next.name] = fixed[step.name]! + open * MINUTE;
    }
    const promise = next && fixed[next.name];
    if (!stands || promise === undefined) return step;
    const to = slotUp(promise);
    const apart = Math.max(0, (to - (i === 0 ? from : slotUp(fixed[step.name]!))) * 5);
    from = to;
    const hands = Math.min(step.hands, apart);
    return { ...step, hands, wait: rigid(apart - hands) };
  });
  return { steps: made, fixed };
}

/** The step a bake stands behind, as a marker: no hands, and of its wait what the bench now knows. */
function markerOf(step: Step, next: Step | undefined, at: AtTouch, running: Running): Step {
  const { asked, kitchen, touches, now } = running;
  const place = kitchen.bakes[asked.bake!]!;
  const choice = touches?.find(({ name }) => name === step.name)?.choice;
  const plain = plainWait(step.wait, choice);
  const shaped = place.entered['shape.finalShape'];
  const isStrict = perishableIn(asked.recipe) !== undefined && step.beforeNext !== undefined;
  const most =
    isStrict && shaped !== undefined
      ? minutesTo(at.since, shaped + step.hands * MINUTE) + plain.max
      : Infinity;
  const during = fromNow(sidesLeft(step.during ?? [], at, touches), at.since, now);
  const live = liveWait(plain, at, { hands: step.hands, most });
  const planned = (name: string | undefined): PlannedTouch | undefined =>
    touches?.find((one) => one.name === name);
  const on = planned(step.beforeNext?.name);
  const load = planned(next?.name)?.at ?? Infinity;
  // A plan without the touch lays the loaf behind another bake's, which has the oven on.
  const isOnSoon = on ? on.at <= now + GRACE * MINUTE : load <= now + STAYS_ON * MINUTE;
  const isHot =
    ON.includes(kitchen.oven.stage) &&
    (place.stage === 'oven.queued' || place.stage === 'proof.soon' || isOnSoon);
  const hot = isHot
    ? fivesUp(Math.max(0, minutesTo(at.since, kitchen.oven.marks['hot'] ?? now)))
    : 0;
  const long = isStrict ? live : reaching(live, { during, at, next, running });
  const min = Math.max(long.min, hot);
  const max = isStrict ? long.max : Math.max(long.max, hot);
  const typicalFrom = Math.min(max, Math.max(long.typicalFrom, min));
  const wait = {
    ...long,
    min,
    typicalFrom,
    typicalTo: Math.max(typicalFrom, Math.min(long.typicalTo, max)),
    max,
  };
  const { beforeNext, during: _, ...rest } = step;
  const before = beforeNext === undefined || isHot ? {} : { beforeNext };
  return { ...rest, ...before, hands: 0, wait, ...(during.length > 0 ? { during } : {}) };
}

/** Once a bake is at the oven, its next load waits in the fridge as long as its baker must be elsewhere. */
const patient = (step: Step): Step =>
  step.name.startsWith('unload ') && (step.uses?.fridge ?? 0) > 0 && !('choices' in step.wait)
    ? { ...step, wait: { ...step.wait, max: Math.max(step.wait.max, EMPTY) } }
    : step;

const touchNames = (steps: readonly Step[]): string[] =>
  steps.flatMap(({ name, during, beforeNext }) => [
    name,
    ...(during ?? []).map((side) => side.name),
    ...(beforeNext ? [beforeNext.name] : []),
  ]);

/** Loaves in one load: all but those that stay cold meanwhile; all, where none does. */
const inOneLoad = ({ loaves = 1, steps }: Batch): number => {
  const loads = steps.filter(({ name }) => name.startsWith('load '));
  const cold = loads[0]?.uses?.fridge ?? 0;
  return cold > 0 ? loaves - cold : Math.ceil(loaves / Math.max(1, loads.length));
};

/** What is left of a batch in the kitchen as it stands; null where nothing is. */
export function cutBatch(batch: Batch, running: Running): Cut {
  const { asked, kitchen, loaves, now } = running;
  const pots = inOneLoad(batch);
  const names = batch.steps.map(({ name }) => name);
  const at =
    asked.bake === null ? null : atTouch(kitchen, asked.bake, names, { loaves, pots, now });
  if (at === null) return { batch, done: [], at };
  if (at === 'over') return { batch: null, done: touchNames(batch.steps), at: null };
  const i = names.indexOf(at.touch);
  if (i < 0) throw new Error(`${batch.name}: no touch is called ${at.touch}.`);
  const step = batch.steps[i]!;
  const marker = markerOf(step, batch.steps[i + 1], at, running);
  const isAtOven = kitchen.bakes[asked.bake!]!.stage === 'oven.queued';
  const ahead = [marker, ...batch.steps.slice(i + 1)];
  const { steps, fixed } = promised(isAtOven ? ahead.map(patient) : ahead, at);
  const left = touchNames(steps);
  const done = touchNames(batch.steps).filter((name) => name === at.touch || !left.includes(name));
  return {
    batch: {
      ...batch,
      steps,
      fixed: { ...fixed, [at.touch]: at.since },
      startAt: at.since,
      stayPut: {},
    },
    done,
    at,
  };
}
