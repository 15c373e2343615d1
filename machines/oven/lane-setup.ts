import { assign } from 'xstate';
import type { OvenAct } from '../../src/core/records/fact.ts';
import { LISTS } from '../../src/core/records/lists.ts';
import type { LanePlace } from '../../src/core/records/position.ts';
import type { LaneStage } from '../../src/core/records/stage.ts';
import type { Instant } from '../../src/core/units.ts';
import type { SayEffect, StageMeta } from '../meta.ts';
import { isOpen, onlyDone, taskCalled, taskDone, waitJudged, mayCall } from '../tasks.ts';
import { setup } from '../setup.ts';

export type LaneContext = Omit<LanePlace, 'stage'>;

export type LaneEvent =
  | {
      type: Exclude<OvenAct, 'loaded' | 'lidOff' | 'steamOut' | 'unloaded'>;
      at: Instant;
      item?: string;
      value?: string;
    }
  | { type: 'lidOff' | 'steamOut'; at: Instant; was?: Instant }
  /** `more`: other loaves want this pot hot again. */
  | { type: 'unloaded'; at: Instant; more: boolean }
  | { type: 'due'; at: Instant }
  | { type: 'lead'; at: Instant; task: string }
  /** Whether loaves still come for this pot. */
  | { type: 'sync'; at: Instant; wanted: boolean }
  | { type: 'judged'; at: Instant; marks: Readonly<Record<string, Instant>> };

const asks = (item: string | undefined): boolean => LISTS.crustSigns.includes(item ?? '');

export const laneSetup = setup({
  types: {
    context: {} as LaneContext,
    input: {} as LaneContext,
    events: {} as LaneEvent,
    meta: {} as StageMeta,
  },
  actions: {
    /** Lid and steam may be reported later than they were; the open minutes run from the real instant. */
    enter: assign(({ context, event }, { stage }: { stage: LaneStage }) => ({
      entered: {
        ...context.entered,
        [stage]: 'was' in event ? (event.was ?? event.at) : event.at,
      },
      byDue: event.type === 'due',
      answers: {},
      marks: {},
      tasks: onlyDone(context.tasks),
    })),
    effect: (_, _params: SayEffect) => undefined,
    answer: assign(({ context, event }) =>
      event.type === 'answer'
        ? { answers: { ...context.answers, [event.item ?? '']: event.value ?? '' } }
        : {},
    ),
    outOfPot: assign({ onRack: true }),
    empty: assign({ loaves: [] }),
    judge: assign(({ context, event }) =>
      event.type === 'judged' ? waitJudged(context, event.marks) : {},
    ),
    callTask: assign(({ context, event }) =>
      event.type === 'lead' ? { tasks: taskCalled(context.tasks, event.task, event.at) } : {},
    ),
    closeTask: assign(({ context, event }) =>
      event.type === 'taskDone'
        ? { tasks: taskDone(context.tasks, event.item ?? '', event.at) }
        : {},
    ),
  },
  guards: {
    isAsked: ({ event }) =>
      event.type === 'answer' && event.value !== undefined && asks(event.item),
    moreCome: ({ event }) => event.type === 'unloaded' && event.more,
    unwanted: ({ event }) => event.type === 'sync' && !event.wanted,
    inPot: ({ context }) => context.vessel === 'pot' && context.onRack !== true,
    mayCall: ({ context, event }) => event.type === 'lead' && mayCall(context, event.task),
    isTask: ({ context, event }) => event.type === 'taskDone' && isOpen(context, event.item ?? ''),
    /** Lid or steam go after the load went in and not later than it is reported. */
    plausible: ({ context, event }) => {
      if (event.type !== 'lidOff' && event.type !== 'steamOut') return false;
      const began = context.entered[event.type === 'lidOff' ? 'lidded' : 'steaming'];
      const { at, was } = event;
      return was === undefined || (was <= at && was >= (began ?? at));
    },
  },
});
