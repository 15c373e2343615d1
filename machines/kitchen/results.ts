import type { Doubt } from '../../src/core/clock/doubt.ts';
import type { WaitInput } from '../../src/core/day/waits.ts';
import { isWarm } from '../../src/core/formula/is-warm.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { Metres } from '../../src/core/oven/boiling.ts';
import { OPENING_BELIEF, type Belief } from '../../src/core/readiness/belief.ts';
import { CARRY_MODEL } from '../../src/core/readiness/carry-over.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { BakeStage, OvenStage } from '../../src/core/records/stage.ts';
import type { Celsius, Instant } from '../../src/core/units.ts';
import { standsAtDoor } from './at-door.ts';
import { coresTaught, moreMinutesAt } from './core-looks.ts';
import { coreResult } from './core-result.ts';
import { isReplanned } from './day-plan.ts';
import { deadlineOf } from './dues.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot, OvenSnapshot } from './kitchen.ts';
import { loafMoves } from './loaf-moves.ts';
import { loavesIn } from './lanes.ts';
import { doneTasks } from '../tasks.ts';
import { believedBefore, teaching } from './last-belief.ts';
import { mixResult, offsetsBefore } from './mixes.ts';
import { bakeInput } from './pinned.ts';
import { soonBakes } from './settle.ts';
import { metaOf, stageOf } from './stage-of.ts';
import { starterResult, type StarterModel } from './starter-result.ts';
import { waitInput } from './wait-input.ts';
import { weighInsOf, weighResult } from './weigh-ins.ts';

/** What tells a wait its instants; the app gives the core's, tests a plain one. */
export type WaitModel = (input: WaitInput) => {
  readonly marks: Readonly<Record<string, Instant>>;
  readonly belief?: Belief;
  readonly doubt?: Doubt;
  readonly model: string;
};

/**
 * Acts of the oven that mean "not yet": the wait they lead back to is not the first of its load. A
 * bake knows it by itself: it has been at the look before.
 */
const AGAIN = ['pokeNotYet', 'crustNotYet', 'crustOnRack'];

const isAgain = (fact: Fact, who: string): boolean =>
  fact.kind === 'press' && fact.who === who && AGAIN.includes(fact.act);

/** The marks of a wait whose end is among them. @throws where a model gives none: it would be lost. */
const endingMarks = (stage: string, waits: string, marks: Result['marks']): Result['marks'] => {
  if (!Number.isFinite(marks[waits])) throw new Error(`The model gives ${stage} no ${waits}.`);
  return marks;
};

/** The recipe that minutes at the oven are for: of the first of these loaves. */
const recipeOf = (
  { starts }: Kitchen,
  loaf: string | undefined,
): { recipe: Recipe; kitchen: Celsius } | null => {
  const start = Object.values(starts).findLast((s) => s.loaves.includes(loaf ?? ''));
  return start ? { recipe: start.recipe, kitchen: start.kitchen } : null;
};

/** A fact under judgement: which waits it measures, and by which model. */
interface Judging {
  readonly fact: Fact;
  readonly measured: (id: string, since: Instant) => boolean;
  readonly wait: WaitModel;
}

/** Of a loaf that was told to bake on: how long, where its core foretold it. */
const moreOf = (kitchen: Kitchen, who: string, fact: Fact): Pick<WaitInput, 'more'> => {
  const lane = kitchen.lanes[who];
  const stays = fact.kind === 'press' && fact.who === who && fact.act === 'crustNotYet';
  const more = stays && lane ? moreMinutesAt(kitchen, who, lane) : null;
  return more === null ? {} : { more };
};

/** What the oven or a lane waits for, by the minutes of the loaf that is in it, or waits first. */
const heatResult = (
  kitchen: Kitchen,
  who: string,
  machine: OvenSnapshot | LaneSnapshot,
  { fact, wait }: Pick<Judging, 'fact' | 'wait'>,
): Result[] => {
  const stage = stageOf(machine) as OvenStage;
  const { waiting } = kitchen.oven.context;
  const inIt = 'loaves' in machine.context ? machine.context.loaves : [];
  const next = [...waiting, ...(soonBakes(kitchen)[0]?.context.loaves ?? [])];
  const of = recipeOf(kitchen, [...inIt, ...next, ...loavesIn(kitchen)][0]);
  const { waits } = metaOf(machine);
  if (waits === undefined || of === null || deadlineOf(machine) !== null) return [];
  const { entered, tasks } = machine.context;
  const since = entered[stage] ?? kitchen.now;
  const bake = Object.values(kitchen.bakes).find(({ context }) =>
    context.loaves.includes(waiting[0] ?? ''),
  );
  const stands = stage === 'standing' ? standsAtDoor(kitchen, fact.id) : null;
  const { marks, model } = wait({
    ...of,
    stage,
    now: since,
    entered,
    touches: 0,
    prior: OPENING_BELIEF,
    seen: [],
    done: doneTasks(tasks),
    again: isAgain(fact, who),
    ...(stands === null ? {} : { stands }),
    ...moreOf(kitchen, who, fact),
    ...('loaves' in machine.context && machine.context.vessel === 'tray' ? { inTray: true } : {}),
    ...(bake === undefined ? {} : loafMoves(kitchen, bake)),
  });
  return [{ who, stage, since, marks: endingMarks(stage, waits, marks), model }];
};

/** What was believed of the starter when a bake began, or, for the fact that begins it, what is. */
const openingOf = (kitchen: Kitchen, start: string, fact: Fact): Belief => {
  const found = kitchen.starts[start];
  if (found === undefined) return OPENING_BELIEF;
  if (fact.id !== start) return bakeInput(found).belief;
  return believedBefore(kitchen, found, found.recipe.formula);
};

/** A bake begins with a belief, a wait or not, and with what earlier doughs, mixes, cores and cool loaves taught. */
const startResult = (kitchen: Kitchen, fact: Fact): Result[] => {
  if (fact.kind !== 'start') return [];
  const { bake: who, from: stage, at: since } = fact;
  const belief = openingOf(kitchen, fact.id, fact);
  const offsets = offsetsBefore(kitchen, fact);
  const cores = coresTaught(kitchen, null, fact);
  const weighIns = weighInsOf(kitchen, fact);
  const vigours = teaching(kitchen, fact);
  return [
    {
      who,
      stage,
      since,
      marks: {},
      belief,
      ...(offsets.length > 0 ? { offsets } : {}),
      ...(cores.length > 0 ? { cores } : {}),
      ...(weighIns.length > 0 ? { weighIns } : {}),
      ...(vigours.length > 0 ? { vigours } : {}),
      model: CARRY_MODEL,
    },
  ];
};

/**
 * A wait is reckoned from its entry, first or after a reading alike, so that a reading never starts
 * it anew. What a reading moves into the past is due now: nothing was due before it was known.
 */
const bakeResult = (
  bake: BakeSnapshot,
  kitchen: Kitchen,
  { fact, measured, wait }: Judging,
): Result[] => {
  const stage = stageOf(bake) as BakeStage;
  const { id, start, recipe, entered } = bake.context;
  const meta = metaOf(bake);
  const waits = meta.waits ?? (isWarm(recipe.process) ? undefined : meta.foretells);
  if (waits === undefined) return [];
  const { now } = kitchen;
  const since = entered[stage] ?? now;
  const again = measured(id, since);
  if (bake.context.marks[waits] !== undefined && !again) return [];
  const said = wait(waitInput(kitchen, bake, openingOf(kitchen, start, fact)));
  const marks = endingMarks(stage, waits, said.marks);
  return [
    {
      who: id,
      stage,
      since,
      marks: again ? { ...marks, [waits]: Math.max(now, marks[waits]!) } : marks,
      ...(said.belief ? { belief: said.belief } : {}),
      ...(said.doubt ? { doubt: said.doubt } : {}),
      model: said.model,
    },
  ];
};

/** The bake that a standing reading or correction speaks of; null for any other fact. */
const spokenOf = ({ standing }: Kitchen, fact: Fact): string | null => {
  if (fact.kind === 'reading') return fact.bake;
  if (fact.kind !== 'correct') return null;
  const old = standing.find(({ id }) => id === fact.target);
  return old?.kind === 'reading' ? old.bake : null;
};

/**
 * Whether a fact has measured the wait of bake `id` that began at `since`. A take-back may lead back
 * into a wait that was measured after it had been left: what was measured then still stands.
 */
const measuredBy =
  (dry: Kitchen, fact: Fact) =>
  (id: string, since: Instant): boolean =>
    fact.kind === 'takeBack'
      ? dry.standing.some((other) => other.at >= since && spokenOf(dry, other) === id)
      : spokenOf(dry, fact) === id || isReplanned(dry, fact, id);

/**
 * The models' one run for a fact, on the kitchen that the bare fact leads to: every wait that has
 * no instants yet, and the wait of a bake just measured. What comes back is attached to the fact.
 * `height`: of the kitchen above the sea.
 */
export const resultsFor = (
  dry: Kitchen,
  fact: Fact,
  wait: WaitModel,
  starter: StarterModel,
  height: Metres = 0,
): Result[] => {
  const measured = measuredBy(dry, fact);
  return [
    ...startResult(dry, fact),
    ...mixResult(dry, fact),
    ...coreResult(dry, fact, wait, height),
    ...weighResult(dry, fact),
    ...starterResult(dry, fact, starter),
    ...heatResult(dry, 'oven', dry.oven, { fact, wait }),
    ...Object.entries(dry.lanes).flatMap(([who, lane]) =>
      heatResult(dry, who, lane, { fact, wait }),
    ),
    ...Object.values(dry.bakes).flatMap((bake) => bakeResult(bake, dry, { fact, measured, wait })),
  ];
};
