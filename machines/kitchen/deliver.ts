import type { BakeAct, Fact } from '../../src/core/records/fact.ts';
import { formulaFault } from '../../src/core/records/formula-fault.ts';
import { isLane } from '../../src/core/records/lane.ts';
import { cutFault } from '../../src/core/records/read-cut.ts';
import { slotOf } from '../../src/core/records/reading-slot.ts';
import { JOINS, type BakeStage } from '../../src/core/records/stage.ts';
import { planAfter } from '../../src/core/records/standing-plan.ts';
import type { BakeEvent } from '../bake/bake-setup.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { bakedLoaves } from './lanes.ts';
import { LEFT_ON } from './oven-left-on.ts';
import { bakeInput } from './pinned.ts';
import { pressLane, pressOven } from './press-oven.ts';
import { layDay } from './day-plan.ts';
import { STARTER } from './starter.ts';
import { keptBack, tend } from './tend-starter.ts';
import { setTimer, stopTimer } from './set-timer.ts';
import { stageOf, valueOf } from './stage-of.ts';
import { stepAttention, stepBake, type Stepped } from './step.ts';

type FactOf<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** Loaves that a bake or the oven already has, loaves of an ended bake in the pots too. */
const knownLoaves = (kitchen: Kitchen): readonly string[] => [
  ...Object.values(kitchen.bakes).flatMap((bake) => bake.context.loaves),
  ...bakedLoaves(kitchen),
];

/** A start needs a name of its own and at least one loaf, each of them its own. */
const mayStart = (kitchen: Kitchen, { id, bake, loaves }: FactOf<'start'>): boolean => {
  const known = knownLoaves(kitchen);
  return (
    bake !== 'oven' &&
    bake !== 'timer' &&
    bake !== STARTER &&
    bake !== LEFT_ON &&
    !isLane(bake) &&
    !(bake in kitchen.bakes) &&
    !(id in kitchen.starts) &&
    loaves.length > 0 &&
    new Set(loaves).size === loaves.length &&
    !loaves.some((loaf) => known.includes(loaf))
  );
};

/**
 * A bake may be joined at any step; it stands there as if it had walked.
 * @throws where the stage is unknown to these machines.
 */
const startBake = (kitchen: Kitchen, machines: Machines, fact: FactOf<'start'>): Stepped => {
  const refused = { kitchen, taken: false, says: [] };
  if (!mayStart(kitchen, fact)) return refused;
  const snapshot = machines.bake.resolveState({
    value: valueOf(fact.from),
    context: {
      ...bakeInput(fact),
      marks: {},
      entered: { [fact.from]: fact.at },
      byDue: false,
      answers: {},
      tasks: {},
      touches: 0,
      readings: {},
    },
  });
  if (snapshot.status !== 'active' || stageOf(snapshot) !== fact.from) return refused;
  return {
    kitchen: {
      ...kitchen,
      bakes: { ...kitchen.bakes, [fact.bake]: snapshot },
      starts: { ...kitchen.starts, [fact.id]: fact },
      plan: planAfter(kitchen.plan, fact),
    },
    taken: true,
    says: [{ who: fact.bake, stage: fact.from }],
  };
};

const bakeEvent = ({ at, act, item, value, loaves }: FactOf<'press'>): BakeEvent =>
  act === 'fewer'
    ? { type: act, at, loaves: loaves ?? [] }
    : {
        type: act as Exclude<BakeAct, 'fewer'>,
        at,
        ...(item === undefined ? {} : { item }),
        ...(value === undefined ? {} : { value }),
      };

/**
 * A `correct` fact speaks for the bake whose reading it corrects, while that reading stands, and of
 * the instant that was measured. Under a newer reading of its kind it is kept and changes nothing.
 */
const correctReading = (
  kitchen: Kitchen,
  machines: Machines,
  { at, target, reading }: FactOf<'correct'>,
): Stepped => {
  const old = kitchen.standing.find((fact) => fact.id === target);
  if (old?.kind !== 'reading' || slotOf(old.reading) !== slotOf(reading)) {
    return { kitchen, taken: false, says: [] };
  }
  const newest = kitchen.standing.findLast(
    (fact) =>
      fact.kind === 'reading' &&
      fact.bake === old.bake &&
      slotOf(fact.reading) === slotOf(old.reading),
  );
  if (newest !== old) return { kitchen, taken: old.bake in kitchen.bakes, says: [] };
  return stepBake(kitchen, machines, old.bake, {
    type: 'corrected',
    at,
    measured: old.at,
    reading,
  });
};

/** What machines tell each other, and what time tells them: never an act of hands. */
const INNER: readonly string[] = [
  'due',
  'lead',
  'sync',
  'judged',
  'reading',
  'corrected',
  'taskKept',
  'cameOut',
];

/** What is in the pot or out of it is baked, and a bake that is past the oven has its loaves. */
const mayGiveUp = (kitchen: Kitchen, { who, loaves = [] }: FactOf<'press'>): boolean => {
  const bake = Object.hasOwn(kitchen.bakes, who) ? kitchen.bakes[who] : undefined;
  if (bake === undefined || /^(cool|rescue)\./.test(stageOf(bake))) return false;
  return bakedLoaves(kitchen).every(
    (loaf) => loaves.includes(loaf) || !bake.context.loaves.includes(loaf),
  );
};

const press = (kitchen: Kitchen, machines: Machines, fact: FactOf<'press'>): Stepped => {
  const mayNot = fact.act === 'fewer' && !mayGiveUp(kitchen, fact);
  if (mayNot || INNER.includes(fact.act)) return { kitchen, taken: false, says: [] };
  if (fact.who === 'oven') return pressOven(kitchen, machines, fact);
  return isLane(fact.who)
    ? pressLane(kitchen, machines, fact)
    : keptBack(stepBake(kitchen, machines, fact.who, bakeEvent(fact)), kitchen, fact);
};

/** The act of a fact itself, given to the machine it concerns. */
export const deliver = (kitchen: Kitchen, machines: Machines, fact: Fact): Stepped => {
  switch (fact.kind) {
    case 'start':
      return startBake(kitchen, machines, fact);
    case 'press':
      return press(kitchen, machines, fact);
    case 'reading':
      return stepBake(kitchen, machines, fact.bake, {
        type: 'reading',
        at: fact.at,
        reading: fact.reading,
      });
    case 'correct':
      return correctReading(kitchen, machines, fact);
    case 'heard':
      return stepAttention(kitchen, machines, { type: 'heard', at: fact.at, call: fact.call });
    case 'snoozed':
      return stepAttention(kitchen, machines, {
        type: 'snoozed',
        at: fact.at,
        call: fact.call,
        until: fact.until,
      });
    case 'timer':
      return setTimer(kitchen, fact);
    case 'timerOff':
      return stopTimer(kitchen, fact);
    case 'starter':
      return tend(kitchen, fact);
    case 'plan':
    case 'planOff':
      return layDay(kitchen, fact);
    // The Book's own: no machine hears of it, for a start pins its recipe. Unreadable, it is not written.
    case 'formula':
      return { kitchen, taken: formulaFault(fact.formula) === null, says: [] };
    case 'formulaOff':
      return { kitchen, taken: fact.formula !== '', says: [] };
    // Of bread, not of a bake that runs: no machine hears of it. Unreadable, it is not written.
    case 'cut':
      return { kitchen, taken: cutFault(fact) === null, says: [] };
    case 'takeBack':
      return stepAttention(kitchen, machines, { type: 'wake', at: fact.at });
    case 'jump':
      throw new Error('A jump is not delivered: it rebuilds the kitchen.');
  }
};

/** Where a start fact may begin. */
export const JOINABLE: readonly BakeStage[] = JOINS;
