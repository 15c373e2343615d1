import { slotUp, SLOT } from '../plan/grid.ts';
import type { Batch, PlanInput, PlannedTouch, Step, Wait } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';
import type { AtTouch, LiveKitchen } from './at-touch.ts';
import type { DayPlan } from './day-plan.ts';
import { cutBatch } from './live-batch.ts';
import { holding } from './live-wait.ts';

/** A touch that begins within so long was announced: it stays. Judgement. */
export const ANNOUNCED: Minutes = 15;
/**
 * Points for each five minutes that a touch moves which somebody counts on. Those up to the fridge pay
 * it together: one by one a chain of eight would hold its first where the dough does not want it, while
 * what comes after the fridge has no reason to move with them. Judgement.
 */
const STAY = 0.02;

/** A day as it was planned, and as it stands. */
export interface LiveDay {
  readonly plan: DayPlan;
  /** The plan's question asked afresh, whole: every bake from its feed on. */
  readonly asked: PlanInput;
  readonly kitchen: LiveKitchen;
  loavesOf(bake: string): readonly string[];
  readonly now: Instant;
}

/** The question from now on, what is done with, and where each running bake stands. */
export interface LiveInput {
  readonly input: PlanInput;
  /** By batch the touches that are over, or in hand. */
  readonly done: Readonly<Record<string, readonly string[]>>;
  readonly at: Readonly<Record<string, AtTouch>>;
}

/** Touches in the order hands come to them; the last of all is the first of the next wait. */
interface Place {
  readonly name: string;
  readonly step: number;
  readonly isMain: boolean;
}

const placesOf = (steps: readonly Step[]): Place[] =>
  steps.flatMap(({ name, during, beforeNext }, step) => [
    { name, step, isMain: true },
    ...(during ?? []).map((side) => ({ name: side.name, step, isMain: false })),
    ...(beforeNext ? [{ name: beforeNext.name, step, isMain: false }] : []),
  ]);

/**
 * The touches of a batch that were announced, in their order: each that begins from now on within
 * a quarter of an hour, as long as nothing before it is late.
 */
function announced(batch: Batch, touches: readonly PlannedTouch[], now: Instant): PlannedTouch[] {
  const ahead = placesOf(batch.steps)
    .filter(({ name }) => batch.fixed?.[name] === undefined)
    .flatMap(({ name }) => touches.find((touch) => touch.name === name) ?? [])
    .toSorted((a, b) => a.at - b.at);
  const stop = ahead.findIndex(({ at }) => at < now || at > now + ANNOUNCED * MINUTE);
  return stop < 0 ? ahead : ahead.slice(0, stop);
}

const plain = (wait: Step['wait']): wait is Wait => !('choices' in wait);

/** A batch whose announced touches stand, and whose waits hold them whatever is reckoned since. */
function frozen(batch: Batch, touches: readonly PlannedTouch[], now: Instant): Batch {
  const fixed: Record<string, Instant> = { ...batch.fixed };
  let steps = [...batch.steps];
  const put = (i: number, step: Step): void => {
    steps = steps.with(i, step);
  };
  for (const { name, at } of announced(batch, touches, now)) {
    const place = placesOf(steps).find((one) => one.name === name)!;
    const i = place.isMain ? place.step - 1 : place.step;
    const step = steps[i];
    const begins = step && fixed[step.name];
    if (step && begins === undefined && (!place.isMain || i >= 0)) {
      // The touch before it is still free: both keep the distance they were planned at.
      fixed[name] = at;
      continue;
    }
    fixed[name] = at;
    if (step === undefined || begins === undefined) continue;
    const minutes = (slotUp(at) - slotUp(begins)) * 5 - step.hands;
    if (minutes < 0) {
      delete fixed[name];
      break;
    }
    if (place.isMain) {
      if (plain(step.wait)) put(i, { ...step, wait: holding(step.wait, minutes) });
      continue;
    }
    const during = (step.during ?? []).map((side) =>
      side.name === name ? { ...side, at: minutes, earlier: 0, later: 0 } : side,
    );
    if (step.during) put(i, { ...step, during });
  }
  return { ...batch, steps, fixed };
}

/** The names a batch still has. */
const namesIn = (batch: Batch): string[] => placesOf(batch.steps).map(({ name }) => name);

/** What the baker pinned, as far as it is still to come. */
const pinsLeft = (
  batch: Batch,
  pins: Batch['fixed'] = {},
  now: Instant,
): Record<string, Instant> => {
  const names = namesIn(batch);
  return Object.fromEntries(
    Object.entries(pins).filter(([name, at]) => names.includes(name) && at >= now),
  );
};

/**
 * The plan's question from now on: what is done is dropped behind a marker at its real time, the wait
 * that runs is the bench's own window, hands come no sooner than now. What was announced and what is
 * promised to the oven stands; everything else costs a little to move.
 */
export function liveInput({ plan, asked, kitchen, loavesOf, now }: LiveDay): LiveInput {
  const done: Record<string, readonly string[]> = {};
  const at: Record<string, AtTouch> = {};
  const from = slotUp(now) * SLOT;
  const batches = asked.batches.flatMap((batch): Batch[] => {
    const bake = plan.ask.bakes.find(({ name }) => name === batch.name);
    if (bake === undefined) return [];
    const touches = plan.touches.filter((touch) => touch.batch === batch.name);
    const cut = cutBatch(batch, {
      asked: bake,
      kitchen,
      loaves: bake.bake === null ? [] : loavesOf(bake.bake),
      touches,
      blocked: asked.blocked,
      now,
    });
    done[batch.name] = cut.done;
    if (cut.at) at[batch.name] = cut.at;
    if (cut.batch === null) return [];
    const left = cut.batch;
    const own = cut.at === null ? {} : left.fixed;
    const pins = pinsLeft(left, { ...(cut.at === null ? batch.fixed : {}), ...bake.pins }, now);
    const stands = frozen({ ...left, fixed: { ...pins, ...own } }, touches, now);
    const names = namesIn(stands);
    const free = touches.filter(
      ({ name }) => names.includes(name) && stands.fixed?.[name] === undefined,
    );
    const chilled = names.indexOf('to fridge');
    const isCold = (name: string): boolean => chilled >= 0 && names.indexOf(name) > chilled;
    const warm = free.filter(({ name }) => !isCold(name)).length;
    const stayPut = Object.fromEntries(
      free.map(({ name, at: stood }) => [
        name,
        { at: stood, costPer5Min: isCold(name) ? STAY : STAY / warm },
      ]),
    );
    const { startAt, ...rest } = stands;
    const begins = startAt === undefined || cut.at ? startAt : Math.max(startAt, from);
    return [{ ...rest, stayPut, ...(begins === undefined ? {} : { startAt: begins }) }];
  });
  return { input: { ...asked, planFrom: from, now, batches }, done, at };
}
