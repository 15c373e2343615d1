import type { Wait, WaitInput } from '../../src/core/day/waits.ts';
import { isWarm } from '../../src/core/formula/is-warm.ts';
import { boilingPoint, type Metres } from '../../src/core/oven/boiling.ts';
import { coreSays } from '../../src/core/oven/core-spots.ts';
import { coreTarget } from '../../src/core/oven/core-target.ts';
import { moreMinutes } from '../../src/core/oven/more-minutes.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { Cored } from '../../src/core/records/taught.ts';
import { MINUTE, type Celsius, type Instant, type Minutes } from '../../src/core/units.ts';
import { doneTasks } from '../tasks.ts';
import { coresOf } from './at-crust.ts';
import { clockOf } from './at-door.ts';
import { coresTaught, moreMinutesAt } from './core-looks.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot } from './kitchen.ts';
import { stageOf } from './stage-of.ts';

/** Written with what a core foretold. */
const CORE_MODEL = 'core-1';

type Lane = readonly [who: string, lane: LaneSnapshot];

/**
 * The loaf that a core of this bake was measured in: the one that has waited longest for its look, else
 * the only one that bakes open. Of several open ones nobody knows which.
 */
function measured({ lanes }: Kitchen, { context }: BakeSnapshot): Lane | null {
  const at = (stage: string): readonly Lane[] =>
    Object.entries(lanes).filter(
      ([, lane]) =>
        stageOf(lane) === stage &&
        lane.context.loaves.some((loaf) => context.loaves.includes(loaf)),
    );
  const entered = ([, lane]: Lane): Instant => lane.context.entered['judge'] ?? Infinity;
  const [first] = at('judge').toSorted((a, b) => entered(a) - entered(b));
  const open = at('open');
  return first ?? (open.length === 1 ? open[0]! : null);
}

/** When what is in a lane went in; null where nobody knows, after a leap of the clock. */
const loadedAt = ({ standing }: Kitchen, { context }: LaneSnapshot): Instant | null => {
  const press = standing.findLast(
    (fact) =>
      fact.kind === 'press' && fact.act === 'loaded' && fact.loaves?.includes(context.loaves[0]!),
  );
  const { lidded, steaming } = context.entered;
  return press?.at ?? lidded ?? steaming ?? null;
};

/** How warm a loaf went in: by the dough clock's path, else as its fridge or its kitchen is. */
const startOf = (kitchen: Kitchen, bake: BakeSnapshot, at: Instant): Celsius => {
  const { recipe, kitchen: room } = bake.context;
  const usual = isWarm(recipe.process) ? room : recipe.process.fridge;
  return clockOf(kitchen, bake, at).loaf?.celsius ?? usual;
};

/** The core of this look, and what follows of it; null where it tells nothing of loaves. */
function coredAt(
  kitchen: Kitchen,
  bake: BakeSnapshot,
  [who, lane]: Lane,
  height: Metres,
): Cored | null {
  const { recipe } = bake.context;
  const loaded = loadedAt(kitchen, lane);
  const { vessel } = lane.context;
  // A flat bread says nothing of how a loaf heats through.
  if (loaded === null || vessel === 'tray') return null;
  const loaf = {
    start: startOf(kitchen, bake, loaded),
    grams: recipe.piece,
    minutes: (kitchen.now - loaded) / MINUTE,
  };
  const filled = recipe.formula.fillings.length > 0;
  const { says, core } = coreSays(coresOf(kitchen, who, lane, bake), { filled, height });
  const since = lane.context.entered[stageOf(lane)]!;
  const past = coresTaught(kitchen, { who, since }).filter((one) => one.vessel === vessel);
  const reading = { ...loaf, boils: boilingPoint(height) };
  const more =
    says === 'low' && core !== null
      ? moreMinutes({ ...reading, core }, past, coreTarget(height).least, recipe.process)
      : null;
  return { ...loaf, height, vessel, filled, more };
}

type WaitModel = (input: WaitInput) => Pick<Wait, 'marks'>;

/**
 * When a loaf that bakes open is looked at next, now that its core is known: in so many minutes where it
 * was low, for the baker has just seen its crust; else as before it was measured.
 */
function openMarks(
  kitchen: Kitchen,
  bake: BakeSnapshot,
  [who, lane]: Lane,
  more: Minutes | null,
  wait: WaitModel,
): Result['marks'] {
  const { entered, tasks } = lane.context;
  const { recipe, kitchen: room } = bake.context;
  const since = entered['open']!;
  const before = moreMinutesAt(kitchen, who, lane);
  const minutes = more ?? before;
  const { marks } = wait({
    stage: 'open',
    recipe,
    kitchen: room,
    entered,
    touches: 0,
    prior: OPENING_BELIEF,
    seen: [],
    done: doneTasks(tasks),
    now: more === null ? since : kitchen.now,
    again: more !== null || 'judge' in entered,
    ...(minutes === null ? {} : { more: minutes }),
  });
  return { ...marks, colour: Math.max(kitchen.now, marks['colour']!) };
}

/** The bake and the instant of a core that a fact measures, or mends; null for any other fact. */
const coreIn = (
  { standing, bakes }: Kitchen,
  fact: Fact,
): { bake: BakeSnapshot; since: Instant | null } | null => {
  if (fact.kind !== 'reading' && fact.kind !== 'correct') return null;
  if (fact.reading.what !== 'coreTemperature') return null;
  const old = fact.kind === 'reading' ? fact : standing.find(({ id }) => id === fact.target);
  const bake = old?.kind === 'reading' ? bakes[old.bake] : undefined;
  const since = fact.kind === 'reading' ? null : old?.results?.find(({ cored }) => cored)?.since;
  return bake === undefined || since === undefined ? null : { bake, since };
};

/**
 * What a core that was measured in the oven foretells of its loaf. A correction does as long as the look
 * it was measured at still stands; after it, it teaches the next ones.
 */
export function coreResult(dry: Kitchen, fact: Fact, wait: WaitModel, height: Metres): Result[] {
  const found = coreIn(dry, fact);
  const lane = found && measured(dry, found.bake);
  if (found === null || lane === null) return [];
  const [who, machine] = lane;
  const stage = stageOf(machine);
  const since = machine.context.entered[stage]!;
  if (found.since !== null && found.since !== since) return [];
  const cored = coredAt(dry, found.bake, lane, height);
  if (cored === null) return [];
  const marks = stage === 'open' ? openMarks(dry, found.bake, lane, cored.more, wait) : {};
  return [{ who, stage: stage as Result['stage'], since, marks, cored, model: CORE_MODEL }];
}
