import { chanceReady } from '../plan/look-times.ts';
import type { PlanInput, Step } from '../plan/types.ts';
import { HOUR, MINUTE, type Celsius, type Instant, type Minutes } from '../../units.ts';
import { WARM_PLACE } from '../warm-place.ts';
import type { Trouble, WayOn } from './came-up.ts';
import type { DayAsk } from './day-plan.ts';
import { elsewhere, windowOf, withWindows, WORTH_A_WALK } from './elsewhere.ts';
import { liveInput, type LiveDay, type LiveInput } from './live-input.ts';
import { beforeFolds } from './missed-fold.ts';
import { withoutFolds } from './without-folds.ts';

/** The coolest room of a home, °C. Judgement. */
const COOL_ROOM: Celsius = 18;
/** It may be ready before one goes: worth a look. Judgement. */
const CHANCE = 0.25;
/** From leaving to being back; of an oven, dead and mended. */
interface Absence {
  readonly from: Instant;
  readonly to: Instant;
}

/** A look before one goes is worth it where one goes in so long at the soonest, min. Judgement. */
const SOONEST_LOOK: Minutes = 30;
/** A fold that was missed is done, or left, within so long, min. Judgement. */
const FOLD_NOW: Minutes = 15;
/** A levain is warmed until so long after its latest, h. Judgement. */
const WARMED = 24;
/** A fridge of which nobody said how cold it is, °C. Common practice, no source. */
const FRIDGE: Celsius = 4;

/** Back so much sooner, in steps, min. Judgement. */
const STEP: Minutes = 30;
/** Bread later, the least that will do, min. Judgement. */
const LATER: readonly Minutes[] = [30, 60, 90, 120, 180, 240, 360, 480, 720, 1440];

const withInput = (live: LiveInput, change: (input: PlanInput) => PlanInput): LiveInput => ({
  ...live,
  input: change(live.input),
});

/** Bread later, by more and more: the last way of all. */
function laterWays(live: LiveInput, ask: DayAsk): WayOn[] {
  return LATER.map((by): WayOn => {
    const due = (at: Instant | null): Instant | null => (at === null ? null : at + by * MINUTE);
    const running = new Set(live.input.batches.map(({ name }) => name));
    return {
      way: 'later',
      by,
      live: withInput(live, (input) => ({
        ...input,
        batches: input.batches.map((batch) => ({ ...batch, due: due(batch.due) })),
      })),
      ask: {
        ...ask,
        bakes: ask.bakes.map((bake) =>
          running.has(bake.name) ? { ...bake, due: due(bake.due) } : bake,
        ),
      },
    };
  });
}

/** A shorter absence, by as little as will do. */
function backSooner(day: LiveDay, { from, to }: Absence): WayOn[] {
  const count = Math.floor((to - from) / (STEP * MINUTE)) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i): WayOn => {
    const by = (i + 1) * STEP;
    const span = { name: 'out', from, to: to - by * MINUTE };
    const asked = { ...day.asked, blocked: [...day.asked.blocked, span] };
    const ask = { ...day.plan.ask, away: [...day.plan.ask.away, span] };
    const { live } = withoutFolds(liveInput({ ...day, asked }), span);
    return { way: 'backSooner', by, live, ask };
  });
}

function awayWays(day: LiveDay, { from, to }: Absence): WayOn[] {
  const span = { name: 'out', from, to };
  const asked = { ...day.asked, blocked: [...day.asked.blocked, span] };
  const ask = { ...day.plan.ask, away: [...day.plan.ask.away, span] };
  const out = { ...day, asked };
  const plain = liveInput(out);
  const folds = withoutFolds(plain, span);
  const ways: WayOn[] = [
    { way: 'asPlanned', live: plain, ask },
    ...[folds, withoutFolds(plain, span, true)].map(({ live, without }): WayOn =>
      without.length > 0
        ? { way: 'leaveFolds', live, without, ask }
        : { way: 'asPlanned', live, ask },
    ),
  ];
  const mayBeReady = Object.values(plain.at).some(({ touch, marks }) => {
    const window = windowOf(marks);
    if (touch !== 'salt and water' || window === null) return false;
    const { earliest: p10, likely: p50, latest: p90 } = window;
    return (
      chanceReady({ p10, p50, p90 }, from) >= CHANCE && from - day.now >= SOONEST_LOOK * MINUTE
    );
  });
  const stay = (way: 'coolRoom' | 'fridge', celsius: (batch: string) => Celsius): WayOn[] => {
    const there = elsewhere(out, plain, { from, to, celsius });
    if (there === null) return [];
    const { live, without } = withoutFolds(liveInput(there.day), span, true);
    const place = { celsius: there.celsius, from };
    return [
      { way, live, ask, works: there.works, place, ...(without.length > 0 ? { without } : {}) },
    ];
  };
  const fridgeOf = (batch: string): Celsius =>
    day.plan.ask.bakes.find(({ name }) => name === batch)?.recipe.process.fridge ?? FRIDGE;
  if (mayBeReady) {
    const soon = Object.fromEntries(
      Object.entries(plain.at).flatMap(([batch, { touch, marks }]) => {
        const window = windowOf(marks);
        return touch === 'salt and water' && window
          ? [[batch, { ...window, earliest: Math.min(window.earliest, day.now) }]]
          : [];
      }),
    );
    ways.push({ way: 'lookFirst', live: liveInput(withWindows(out, soon)), ask });
  }
  ways.push(
    ...stay('coolRoom', () => Math.min(COOL_ROOM, day.plan.ask.kitchen)),
    ...stay('fridge', fridgeOf),
  );
  return [...ways, ...backSooner(day, span), ...laterWays(folds.live, ask)];
}

function lateLevain(day: LiveDay, batch: string, by: Minutes): WayOn[] {
  const { ask } = day.plan;
  const marks = liveInput(day).at[batch]?.marks ?? {};
  const window = windowOf(marks);
  if (window === null)
    return [{ way: 'fromNow', live: liveInput(day), ask }, ...laterWays(liveInput(day), ask)];
  const late = (at: Instant): Instant => Math.max(at, day.now) + by * MINUTE;
  const shifted = {
    earliest: late(window.earliest),
    likely: late(window.likely),
    latest: late(window.latest),
  };
  const slow = withWindows(day, { [batch]: shifted });
  const plain = liveInput(slow);
  const to = shifted.latest + WARMED * HOUR;
  const warm = elsewhere(slow, plain, { from: day.now, to, celsius: () => WARM_PLACE });
  const isWarmer = ask.kitchen <= WARM_PLACE - WORTH_A_WALK;
  return [
    { way: 'fromNow', live: plain, ask },
    ...(warm && isWarmer
      ? [
          {
            way: 'warmPlace' as const,
            live: liveInput(warm.day),
            ask,
            place: { celsius: WARM_PLACE, from: day.now },
          },
        ]
      : []),
    ...laterWays(plain, ask),
  ];
}

/** No loaf goes in while the oven is dead, nor before it is hot again. */
function deadOven(day: LiveDay, { from, to }: Absence): WayOn[] {
  const { ask } = day.plan;
  const lags = day.asked.batches.flatMap(({ steps }) =>
    steps.flatMap(({ beforeNext }) =>
      beforeNext ? [beforeNext.typicalTo + beforeNext.hands] : [],
    ),
  );
  const hot = to + Math.max(0, ...lags) * MINUTE;
  const steps = (all: readonly Step[]): Step[] =>
    all.map((step) =>
      step.beforeNext
        ? { ...step, beforeNext: { ...step.beforeNext, max: step.beforeNext.typicalTo } }
        : step,
    );
  const asked: PlanInput = {
    ...day.asked,
    ovenBusy: [...(day.asked.ovenBusy ?? []), { name: 'oven', from, to: hot }],
    batches: day.asked.batches.map((batch) => ({ ...batch, steps: steps(batch.steps) })),
  };
  const cold = { ...day.kitchen.oven, stage: 'off' };
  const live = liveInput({ ...day, asked, kitchen: { ...day.kitchen, oven: cold } });
  const isFree = (name: string): boolean => !/^(?:oven on|load )/.test(name);
  // An oven that is dead keeps no promise: what was announced of it moves.
  const loose = withInput(live, (input) => ({
    ...input,
    batches: input.batches.map((batch) => ({
      ...batch,
      fixed: Object.fromEntries(
        Object.entries(batch.fixed ?? {}).filter(
          ([name]) => isFree(name) || live.done[batch.name]?.includes(name),
        ),
      ),
    })),
  }));
  return [{ way: 'waitCold', live: loose, ask }, ...laterWays(loose, ask)];
}

/**
 * What can be done about what came up, the gentlest first: each a question of its own. The baker is told
 * the first that has a plan, and the next as a fallback (`planAndFallback`).
 */
export function waysOn(trouble: Trouble, day: LiveDay): WayOn[] {
  const { ask } = day.plan;
  switch (trouble.trouble) {
    case 'away':
      return awayWays(day, trouble);
    case 'overslept': {
      const live = liveInput(day);
      return [{ way: 'fromNow', live, ask }, ...laterWays(live, ask)];
    }
    case 'foldMissed': {
      const live = liveInput(beforeFolds(day));
      const span = { from: day.now, to: day.now + FOLD_NOW * MINUTE };
      const { without, live: left } = withoutFolds(live, span, true, trouble);
      const skip: WayOn[] =
        without.length > 0 ? [{ way: 'leaveFolds', live: left, without, ask }] : [];
      const atOnce = { batch: trouble.batch, name: trouble.touch };
      return [{ way: 'foldNow', live, ask, atOnce }, ...skip, ...laterWays(live, ask)];
    }
    case 'levainLate':
      return lateLevain(day, trouble.batch, trouble.by);
    case 'ovenDead':
      return deadOven(day, trouble);
  }
}
