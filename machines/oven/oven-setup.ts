import { assign, setup } from 'xstate';
import type { Vessel } from '../../src/core/formula/formula.ts';
import type { OvenAct } from '../../src/core/records/fact.ts';
import { beforeOvenItems, closes, LISTS } from '../../src/core/records/lists.ts';
import type { OvenPlace } from '../../src/core/records/position.ts';
import type { OvenStage } from '../../src/core/records/stage.ts';
import type { Instant } from '../../src/core/units.ts';
import type { SayEffect, StageMeta } from '../meta.ts';
import { isOpen, onlyDone, taskCalled, taskDone, tasksJudged } from '../tasks.ts';

/**
 * `waiting`: loaves whose bake stands at the oven, neither in the load nor out.
 * `load`: loaves in the pots now. `out`: loaves out whose bake has not yet gone on.
 */
export type OvenContext = Omit<OvenPlace, 'stage'>;

export type OvenEvent =
  | {
      type: Exclude<OvenAct, 'loaded' | 'lidOff' | 'steamOut'>;
      at: Instant;
      item?: string;
      value?: string;
    }
  | { type: 'loaded'; at: Instant; loaves: readonly string[] }
  | { type: 'lidOff' | 'steamOut'; at: Instant; was?: Instant }
  | { type: 'due'; at: Instant }
  | { type: 'lead'; at: Instant; task: string }
  | {
      type: 'sync';
      at: Instant;
      waiting: readonly string[];
      vessel: Vessel;
      soon: boolean;
      /** Time, and no press, has brought those who come soon: the oven calls for itself. */
      called: boolean;
    }
  | { type: 'judged'; at: Instant; marks: Readonly<Record<string, Instant>> };

type OvenList = 'pokeSigns' | 'beforeOven' | 'crustSigns';

const itemsOf = (list: OvenList, { vessel }: OvenContext): readonly string[] =>
  list === 'beforeOven' ? beforeOvenItems(vessel) : LISTS[list];

/** Only waiting loaves, at least one, none twice; how many places there are the baker knows. */
const isLoad = (waiting: readonly string[], event: OvenEvent): boolean =>
  event.type === 'loaded' &&
  event.loaves.length > 0 &&
  new Set(event.loaves).size === event.loaves.length &&
  event.loaves.every((loaf) => waiting.includes(loaf));

export const ovenSetup = setup({
  types: {
    context: {} as OvenContext,
    events: {} as OvenEvent,
    meta: {} as StageMeta,
  },
  actions: {
    /** Lid and steam may be reported later than they were; the open minutes run from the real instant. */
    enter: assign(({ context, event }, { stage }: { stage: OvenStage }) => ({
      entered: {
        ...context.entered,
        [stage]: 'was' in event ? (event.was ?? event.at) : 'at' in event ? event.at : 0,
      },
      byDue: event.type === 'due' || (event.type === 'sync' && event.called),
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
    queue: assign(({ event }) =>
      event.type === 'sync'
        ? { waiting: event.waiting, vessel: event.vessel, soon: event.soon }
        : {},
    ),
    putIn: assign(({ context, event }) =>
      event.type === 'loaded'
        ? {
            load: event.loaves,
            waiting: context.waiting.filter((loaf) => !event.loaves.includes(loaf)),
          }
        : {},
    ),
    takeOut: assign(({ context }) => ({ out: [...context.out, ...context.load], load: [] })),
    /** Every bake has seen its loaves out by now; the next firing has its tasks anew. */
    forget: assign({ out: [], tasks: {} }),
    judge: assign(({ context, event }) =>
      event.type === 'judged'
        ? {
            marks: event.marks,
            tasks: tasksJudged(context.tasks, context.marks, event.marks),
          }
        : {},
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
    completes: ({ context, event }, { list }: { list: OvenList }) =>
      event.type === 'answer' &&
      itemsOf(list, context).every((item) =>
        closes(list, item, item === event.item ? event.value : context.answers[item]),
      ),
    isAsked: ({ context, event }, { list }: { list: OvenList }) =>
      event.type === 'answer' &&
      event.value !== undefined &&
      itemsOf(list, context).includes(event.item ?? ''),
    someWait: ({ event }) => event.type === 'sync' && event.waiting.length > 0,
    someCome: ({ event }) => event.type === 'sync' && (event.waiting.length > 0 || event.soon),
    calledFor: ({ event }) => event.type === 'sync' && event.soon && event.called,
    noneCome: ({ event }) => event.type === 'sync' && event.waiting.length === 0 && !event.soon,
    noneYet: ({ event }) => event.type === 'sync' && event.waiting.length === 0 && event.soon,
    moreWait: ({ context }) => context.waiting.length > 0,
    moreCome: ({ context }) => context.waiting.length > 0 || context.soon,
    fits: ({ context, event }) => isLoad(context.waiting, event),
    fitsStone: ({ context, event }) => context.vessel === 'stone' && isLoad(context.waiting, event),
    fitsTin: ({ context, event }) => context.vessel === 'tin' && isLoad(context.waiting, event),
    /** What was made ready is for another kind of load: look at this one first. */
    otherVessel: ({ context, event }) => event.type === 'sync' && event.vessel !== context.vessel,
    mayCall: ({ context, event }) =>
      event.type === 'lead' &&
      isOpen(context, event.task) &&
      (context.tasks[event.task]?.called ?? null) === null,
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
