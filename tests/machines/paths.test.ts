import { describe, expect, it } from 'vitest';
import { initialTransition, type AnyStateMachine } from 'xstate';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { metaOf, stageOf } from '../../machines/kitchen/stage-of.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { Place } from '../../src/core/records/position.ts';
import {
  BAKE_STAGES,
  LANE_STAGES,
  OVEN_STAGES,
  type Hazard,
} from '../../src/core/records/stage.ts';
import { explore, stagesOf, transitionsOf } from './support/coverage.ts';
import { attentionEvents, bakeEvents, CALLS, laneEvents, ovenEvents } from './support/events.ts';
import { RECIPE, SCOOP, TIN } from './support/recipe.ts';

const { bake, oven, lane, attention } = MACHINES;

const TOUCHES = RECIPE.process.touches;

const startOf = (recipe: Recipe) =>
  initialTransition(bake, {
    id: 'a',
    start: 'f1',
    startedAt: 0,
    loaves: ['a1', 'a2'],
    recipe,
    kitchen: 24,
    belief: OPENING_BELIEF,
  })[0];

/** What a wait's task has come to: not there, open, called or done. Beyond waits it does not matter. */
const tasksOf = (
  state: Parameters<typeof metaOf>[0] & { context: Pick<Place, 'marks' | 'tasks'> },
) =>
  metaOf(state).waits === undefined
    ? null
    : ['lead.nuts' in state.context.marks, state.context.tasks['nuts']];

const bakeWalk = explore(bake, {
  // Fold or filling first, fold or filling last, no touch at all; warm in a tin, shaped or spooned in.
  from: [
    ...[TOUCHES, TOUCHES.slice(1), TOUCHES.slice(0, 2), []].map((touches) => ({
      ...RECIPE,
      process: { ...RECIPE.process, touches },
    })),
    { ...RECIPE, fillingAtOnce: true as const },
    TIN,
    SCOOP,
    { ...SCOOP, process: { ...SCOOP.process, retard: 720 } },
  ].map(startOf),
  events: bakeEvents,
  key: (state) =>
    JSON.stringify([
      stageOf(state),
      state.context.touches,
      Object.keys(state.context.answers),
      state.context.byDue,
      // Which way a warm proof goes on.
      'proof.soon' in state.context.entered,
      (state.context.marks['look'] ?? 0) < (state.context.marks['oven'] ?? 0),
      tasksOf(state),
    ]),
});

const ovenWalk = explore(oven, {
  from: [initialTransition(oven)[0]],
  events: ovenEvents,
  key: (state) => {
    const { waiting, soon, vessel, out, answers, byDue, lanes, turns, madeReady } = state.context;
    return JSON.stringify([
      state.value,
      vessel,
      waiting,
      soon,
      out,
      lanes !== undefined,
      waiting.map((loaf) => ['later', 'flat'].indexOf(turns?.[loaf] ?? '')),
      madeReady,
      Object.keys(answers),
      byDue,
      tasksOf(state),
    ]);
  },
});

const laneWalk = explore(lane, {
  from: (
    [
      ['pot', 'lidded'],
      ['stone', 'steaming'],
      ['tin', 'open'],
      ['tray', 'open'],
    ] as const
  ).map(([vessel, stage]) =>
    lane.resolveState({
      value: stage,
      context: {
        marks: {},
        entered: { [stage]: 0 },
        byDue: false,
        answers: {},
        tasks: {},
        vessel,
        loaves: ['a1'],
      },
    }),
  ),
  events: laneEvents,
  key: (state) => {
    const { vessel, answers, byDue, onRack } = state.context;
    return JSON.stringify([
      state.value,
      vessel,
      Object.keys(answers),
      byDue,
      onRack,
      tasksOf(state),
    ]);
  },
});

const attentionWalk = explore(attention, {
  // As after a jump, too: a call comes back that was silenced before.
  from: [
    initialTransition(attention)[0],
    attention.resolveState({
      value: 'quiet',
      context: { calls: [], heard: CALLS.map(({ id }) => id), snoozed: {} },
    }),
  ],
  events: attentionEvents,
  key: ({ value, context }) => JSON.stringify([value, context]),
});

const WALKS = [
  ['bake', bake, bakeWalk],
  ['oven', oven, ovenWalk],
  ['lane', lane, laneWalk],
  ['attention', attention, attentionWalk],
] as const;

describe.each(WALKS)('the %s machine', (name, machine: AnyStateMachine, walk) => {
  const reached = new Set<string>(walk.steps.map(({ to }) => stageOf(to)));

  it('is walked through every state and every transition of its definition', () => {
    const all = [...transitionsOf(machine).values()];
    const missing = all.filter((transition) => !walk.taken.has(transition));
    const states = stagesOf(machine);
    console.log(
      `${name}: ${states.length} states, ${all.length} transitions, ${walk.steps.length} steps`,
    );
    expect(missing).toEqual([]);
    expect(states.filter((stage) => !reached.has(stage))).toEqual([]);
    expect(walk.taken).not.toContain('unknown');
  });

  it('moves only when something answers, and says beforehand whether it will', () => {
    for (const { from, event, to, taken } of walk.steps) {
      expect(from.can(event as never)).toBe(taken);
      if (!taken) expect(to).toBe(from);
    }
  });
});

describe('stages', () => {
  it('are those the records name, no more and no fewer', () => {
    expect(stagesOf(bake).toSorted()).toEqual([...BAKE_STAGES].toSorted());
    const ovens = OVEN_STAGES.filter(
      (stage) => !(LANE_STAGES as readonly string[]).includes(stage),
    );
    expect(stagesOf(oven).toSorted()).toEqual(ovens.toSorted());
    expect(stagesOf(lane).toSorted()).toEqual([...LANE_STAGES, 'gone'].toSorted());
  });

  const everywhere = [
    ...new Map(
      [...bakeWalk.steps, ...ovenWalk.steps, ...laneWalk.steps].map(
        ({ to }) => [stageOf(to), to] as const,
      ),
    ).values(),
  ];

  it('that wait have no deadline before their results, and exactly theirs after', () => {
    const waits = everywhere.filter((state) => metaOf(state).waits !== undefined);
    expect(waits.map((state) => stageOf(state)).toSorted()).toEqual(
      Object.keys(WAITING).toSorted(),
    );
    for (const { to } of [...bakeWalk.steps, ...ovenWalk.steps, ...laneWalk.steps].filter(
      ({ from, to }) => from !== to && stageOf(from) !== stageOf(to),
    )) {
      // The end of a warm proof is the same wait that went on: its look is already laid.
      const goesOn = stageOf(to) === 'proof.soon' && to.context.byDue;
      if (!goesOn) expect([stageOf(to), deadlineOf(to)]).toEqual([stageOf(to), null]);
    }
    for (const { event, to } of [...bakeWalk.steps, ...ovenWalk.steps, ...laneWalk.steps]) {
      if (event.type === 'judged' && metaOf(to).waits) expect(deadlineOf(to)).toBe(1);
    }
  });

  it('answer to a due where they wait, and only there', () => {
    for (const { from, event, taken } of [
      ...bakeWalk.steps,
      ...ovenWalk.steps,
      ...laneWalk.steps,
    ]) {
      if (event.type === 'due') expect(taken).toBe(metaOf(from).waits !== undefined);
    }
  });

  it('wait for the mark that the trade names', () => {
    for (const state of everywhere) expect(metaOf(state).waits).toBe(WAITING[stageOf(state)]);
  });

  it('carry the hazard that opens a gate, each where hands meet it', () => {
    const gated = everywhere.flatMap((state) => {
      const { hazard } = metaOf(state);
      return hazard && hazard !== 'raw' ? [[stageOf(state), hazard] as const] : [];
    });
    expect(Object.fromEntries(gated)).toEqual(GATED);
  });

  it('in which hands meet raw flour or dough say so', () => {
    const raw = everywhere.filter((state) => metaOf(state).hazard === 'raw').map(stageOf);
    expect(raw.toSorted()).toEqual([...RAW].toSorted());
  });

  it('always take the sync that tells the oven who waits', () => {
    for (const { from, event, taken } of ovenWalk.steps) {
      if (event.type === 'sync') expect([stageOf(from), taken]).toEqual([stageOf(from), true]);
    }
  });

  it('of a lane hold a load exactly while it is hot and in', () => {
    for (const { to } of laneWalk.steps) {
      expect([to.value, to.context.loaves.length > 0]).toEqual([
        to.value,
        !['recover', 'gone'].includes(to.value),
      ]);
    }
  });

  it('of the oven keep every pot but those said to be out, and one at least', () => {
    for (const { from, event, to } of ovenWalk.steps) {
      const [before, after] = [from.context.lanes, to.context.lanes];
      if (before === undefined || after === undefined || event.type === 'ovenOn') continue;
      expect(after).toEqual(
        event.type === 'potOut' && before.length > 1
          ? before.filter((one) => one !== event.item)
          : before,
      );
      expect(after.length).toBeGreaterThan(0);
    }
  });
});

/** Each waiting stage and the mark it waits for: from the walk of the bake. */
const WAITING: Readonly<Record<string, string>> = {
  'levain.ripening': 'look',
  'mix.rest': 'end',
  'bulk.between': 'touch',
  'bulk.proving': 'look',
  'shape.benchRest': 'end',
  'proof.counter': 'end',
  'proof.retard': 'look',
  'proof.warm': 'turn',
  'proof.soon': 'look',
  'cool.cooling': 'end',
  preheating: 'hot',
  standing: 'poke',
  lidded: 'lid',
  steaming: 'vent',
  open: 'colour',
  recover: 'hot',
};

/** Hot iron, blades and the oven's own switch: grown-ups only (judgement, after the care page). */
const GATED: Readonly<Record<string, Hazard>> = {
  turnOn: 'machine',
  turnOff: 'machine',
  score: 'blade',
  load: 'hot',
  tray: 'hot',
  lift: 'hot',
  vent: 'hot',
  judge: 'hot',
  unload: 'hot',
  'rescue.tray': 'hot',
};

const RAW: readonly string[] = [
  'levain.feed',
  'mix.weigh',
  'mix.first',
  'mix.salt',
  'mix.work',
  'bulk.fold',
  'bulk.spread',
  'bulk.scatter',
  'bulk.roll',
  'shape.divide',
  'shape.preshape',
  'shape.finalShape',
  'shape.basket',
  'shape.scoop',
];
