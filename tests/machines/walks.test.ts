import { getShortestPaths } from '@xstate/graph';
import { describe, expect, it } from 'vitest';
import {
  initialTransition,
  type AnyMachineSnapshot,
  type EventObject,
  type SnapshotFrom,
} from 'xstate';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { metaOf, stageOf } from '../../machines/kitchen/stage-of.ts';
import type { Vessel } from '../../src/core/formula/formula.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import { BAKE_STAGES, LANE_STAGES, OVEN_STAGES } from '../../src/core/records/stage.ts';
import { bakeEvents, laneEvents, ovenEvents } from './support/events.ts';
import { Hand } from './support/hand.ts';
import { stepOn, walkTo, walkToEnd } from './support/onward.ts';
import { RECIPE, SCOOP, STONE, TIN } from './support/recipe.ts';

type Event = EventObject & Readonly<Record<string, unknown>>;
interface Path {
  readonly to: string;
  readonly steps: readonly { readonly event: Event; readonly stage: string }[];
}

/** The shortest path to each stage of a machine, of what hands and time alone can do. */
const shortest = (
  machine: typeof MACHINES.bake | typeof MACHINES.oven | typeof MACHINES.lane,
  fromState: AnyMachineSnapshot,
  events: (state: never) => readonly EventObject[],
  key: (state: never) => string,
): readonly Path[] => {
  const paths = getShortestPaths(machine as never, {
    fromState: fromState as never,
    events: ((state: never) =>
      events(state).filter(({ type }) => type !== 'judged' && type !== 'corrected')) as never,
    serializeState: key as never,
    serializeEvent: ((event: Event) => JSON.stringify(event)) as never,
  });
  const byStage = new Map<string, Path>();
  for (const { state, steps } of paths as readonly {
    state: AnyMachineSnapshot;
    steps: readonly { event: Event; state: AnyMachineSnapshot }[];
  }[]) {
    const to = stageOf(state);
    if ((byStage.get(to)?.steps.length ?? Infinity) <= steps.length) continue;
    byStage.set(to, {
      to,
      steps: steps.slice(1).map((step) => ({ event: step.event, stage: stageOf(step.state) })),
    });
  }
  return [...byStage.values()];
};

/** The shortest paths of a bake of this recipe. */
const pathsOf = (recipe: Recipe): readonly Path[] =>
  shortest(
    MACHINES.bake,
    initialTransition(MACHINES.bake, {
      id: 'a',
      start: 'f1',
      startedAt: 0,
      loaves: ['a1', 'a2'],
      recipe,
      kitchen: 24,
      belief: OPENING_BELIEF,
    })[0],
    bakeEvents as never,
    ((state: ReturnType<typeof initialTransition<typeof MACHINES.bake>>[0]) =>
      JSON.stringify([
        stageOf(state),
        state.context.touches,
        Object.keys(state.context.answers),
        'proof.soon' in state.context.entered,
      ])) as never,
  );

const OWN = ['proof.warm', 'proof.soon', 'proof.poke'];
const bakePaths = [
  ...pathsOf(RECIPE).map((path) => ({ ...path, recipe: RECIPE })),
  ...pathsOf(TIN)
    .filter(({ to }) => OWN.includes(to))
    .map((path) => ({ ...path, recipe: TIN })),
  ...pathsOf(SCOOP)
    .filter(({ to }) => to === 'shape.scoop')
    .map((path) => ({ ...path, recipe: SCOOP })),
];

const ovenPaths = shortest(
  MACHINES.oven,
  initialTransition(MACHINES.oven)[0],
  ((state: ReturnType<typeof initialTransition<typeof MACHINES.oven>>[0]) =>
    ovenEvents(state).filter(
      ({ type }) =>
        !['cameOut', 'taskKept'].includes(type) &&
        (type !== 'sync' || state.value === 'off') &&
        // The kitchen leaves a loaf in its tin.
        (type !== 'pokeFlat' || state.context.vessel !== 'tin'),
    )) as never,
  ((state: ReturnType<typeof initialTransition<typeof MACHINES.oven>>[0]) =>
    JSON.stringify([
      state.value,
      state.context.vessel,
      state.context.soon,
      state.context.turns,
      state.context.out,
      Object.keys(state.context.answers),
    ])) as never,
);

type LaneSnapshot = SnapshotFrom<typeof MACHINES.lane>;

/** The paths of a load by what it bakes in, from its load on. */
const lanePaths = (
  [
    ['lidded', RECIPE],
    ['steaming', STONE],
    ['open', TIN],
  ] as const
).flatMap(([first, recipe]) =>
  shortest(
    MACHINES.lane,
    MACHINES.lane.resolveState({
      value: first,
      context: {
        marks: {},
        entered: { [first]: 0 },
        byDue: false,
        answers: {},
        tasks: {},
        vessel: recipe.process.vessel,
        loaves: ['a1'],
      },
    }),
    ((state: LaneSnapshot) => laneEvents(state).filter(({ type }) => type !== 'sync')) as never,
    ((state: LaneSnapshot) =>
      JSON.stringify([state.value, Object.keys(state.context.answers)])) as never,
  ).map((path) => ({ ...path, recipe })),
);

/** Every machine that waits has the instant at which it ends. */
const expectMarks = (hand: Hand): void => {
  for (const machine of [
    hand.kitchen.oven,
    ...Object.values(hand.kitchen.lanes),
    ...Object.values(hand.kitchen.bakes),
  ]) {
    expect([stageOf(machine), deadlineOf(machine) !== null]).toEqual([
      stageOf(machine),
      metaOf(machine).waits !== undefined,
    ]);
  }
};

/** A generated step as the kitchen meets it: a press, a reading, time passing, the oven's work. */
const act = (hand: Hand, who: string, event: Event): void => {
  const { type, at: _, ...payload } = event;
  if (type === 'due') hand.turnTo(hand.deadline(who)!);
  else if (type === 'reading') hand.measure('a', payload['reading'] as never);
  else if (type !== 'sync') hand.press(who, type, payload);
  else if (who === 'oven') {
    const recipe = { pot: RECIPE, stone: STONE, tin: TIN }[payload['vessel'] as Vessel];
    // Loaves of a warm proof that come soon: it has come so far that the oven is wanted.
    if (payload['soon']) hand.start('a', 'proof.soon', ['a1', 'a2'], TIN);
    else hand.start('a', 'oven.queued', ['a1', 'a2'], recipe);
  } else while (hand.stage('a') === 'oven.queued') stepOn(hand, 'oven');
};

const walk = (who: string, { to, steps, recipe = RECIPE }: Path & { recipe?: Recipe }): Hand => {
  const hand = new Hand();
  if (who === 'a') hand.start('a', 'read.plan', ['a1', 'a2'], recipe);
  for (const { event, stage } of steps) {
    act(hand, who, event);
    const over = ['done', 'ended'].includes(stage);
    const stands = who === 'oven' ? stageOf(hand.kitchen.oven) : hand.stage(who);
    expect([to, event.type, stands]).toEqual([to, event.type, over ? null : stage]);
    expectMarks(hand);
  }
  return hand;
};

describe('in a kitchen, hands and time alone reach', () => {
  it('every stage there is, by a generated path', () => {
    expect([...new Set(bakePaths.map(({ to }) => to))].toSorted()).toEqual(
      [...BAKE_STAGES].toSorted(),
    );
    const lanes: readonly string[] = LANE_STAGES;
    const ovens = OVEN_STAGES.filter((stage) => !lanes.includes(stage));
    // What is out of its lanes turns it off: their paths end there.
    expect([...ovenPaths.map(({ to }) => to), 'turnOff'].toSorted()).toEqual(ovens.toSorted());
    expect([...new Set(lanePaths.map(({ to }) => to))].toSorted()).toEqual(
      [...lanes, 'gone'].toSorted(),
    );
  });

  it.each(bakePaths)('$to of a bake, every wait on the way with its end', (path) => {
    expect(walk('a', path).replayed().trouble).toBeNull();
  });

  it.each(ovenPaths)('$to of the oven, every wait on the way with its end', (path) => {
    expect(walk('oven', path).replayed().trouble).toBeNull();
  });

  it.each(lanePaths)('$to of a load ($recipe.process.vessel), and then the end', (path) => {
    const hand = new Hand();
    // A pot is wanted hot again only where another loaf waits.
    const last = path.steps.some(({ event }) => event['more'] === false);
    hand.start('a', 'oven.queued', last ? ['a1'] : ['a1', 'a2'], path.recipe);
    walkTo(hand, 'oven', 'load');
    hand.press('oven', 'loaded', { loaves: ['a1'] });
    for (const { event, stage } of path.steps) {
      act(hand, 'lane.pot', event);
      expect(hand.stage('lane.pot')).toBe(stage === 'gone' ? null : stage);
      expectMarks(hand);
    }
    walkToEnd(hand);
    expect(hand.replayed().trouble).toBeNull();
  });
});
