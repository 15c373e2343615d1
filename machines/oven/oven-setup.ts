import { assign } from 'xstate';
import type { Vessel } from '../../src/core/formula/formula.ts';
import type { OvenAct } from '../../src/core/records/fact.ts';
import { isLane, TRAY_LANE } from '../../src/core/records/lane.ts';
import { beforeOvenItems, closes, LISTS } from '../../src/core/records/lists.ts';
import type { OvenPlace, Turn } from '../../src/core/records/position.ts';
import { inTurn } from '../../src/core/oven/in-turn.ts';
import type { OvenStage } from '../../src/core/records/stage.ts';
import type { Grams, Instant } from '../../src/core/units.ts';
import type { SayEffect, StageMeta } from '../meta.ts';
import { isOpen, onlyDone, taskCalled, taskDone, taskKept, waitJudged, mayCall } from '../tasks.ts';
import { setup } from '../setup.ts';

/** What its lanes are at, told by every sync. `free`: one could take the loaf that waits first. */
export interface Rack {
  readonly full: boolean;
  readonly free: boolean;
  readonly reheats: boolean;
}

/**
 * `waiting`: loaves whose bake stands at the oven, neither in it nor out. `out`: loaves out whose bake
 * has not yet gone on. The rack is a level, told again after a rebuild.
 */
export type OvenContext = Omit<OvenPlace, 'stage'> & { readonly rack: Rack };

export type OvenEvent =
  | {
      type: Exclude<OvenAct, 'loaded' | 'ovenOn' | 'lidOff' | 'steamOut'>;
      at: Instant;
      item?: string;
      value?: string;
    }
  /** `more`: another pot is hot and empty, and another loaf waits that fits it. */
  | { type: 'loaded'; at: Instant; loaves: readonly string[]; more: boolean }
  | {
      type: 'ovenOn';
      at: Instant;
      lanes?: readonly string[];
      holds?: Readonly<Record<string, Grams>>;
    }
  | { type: 'due'; at: Instant }
  | { type: 'lead'; at: Instant; task: string }
  /** A task of a lane's wait was done: it is not asked again in this firing. */
  | { type: 'taskKept'; at: Instant; task: string }
  | { type: 'cameOut'; at: Instant; loaves: readonly string[] }
  | {
      type: 'sync';
      at: Instant;
      waiting: readonly string[];
      vessel: Vessel;
      soon: boolean;
      rack: Rack;
      /** Time, and no press, has led here: the oven calls for itself. */
      called: boolean;
    }
  | { type: 'judged'; at: Instant; marks: Readonly<Record<string, Instant>> };

type OvenList = 'pokeSigns' | 'beforeOven';

const itemsOf = (list: OvenList, { vessel }: OvenContext): readonly string[] =>
  list === 'beforeOven' ? beforeOvenItems(vessel) : LISTS[list];

/** Only waiting loaves, at least one, none twice. */
const isLoad = (waiting: readonly string[], event: OvenEvent): boolean =>
  event.type === 'loaded' &&
  event.loaves.length > 0 &&
  new Set(event.loaves).size === event.loaves.length &&
  event.loaves.every((loaf) => waiting.includes(loaf));

const without = (all: readonly string[], item: string | undefined): readonly string[] =>
  all.filter((one) => one !== item);

/** Where nobody counted the pots any load may go in; else each is one, and there is one at least. */
const arePots = (lanes: readonly string[] | undefined): boolean =>
  lanes === undefined ||
  (lanes.length > 0 &&
    new Set(lanes).size === lanes.length &&
    lanes.every((lane) => isLane(lane) && lane !== TRAY_LANE));

const isLater = ({ lanes, turns }: OvenContext, loaf: string): boolean =>
  lanes === undefined || turns?.[loaf] === 'later';

/** Whether another than the first waits that nobody has left for later: then a sluggish one goes last. */
export const othersAreFresh = (context: OvenContext): boolean =>
  context.waiting.slice(1).some((loaf) => !isLater(context, loaf));

/** A loaf said to go first or last goes there among those that wait, behind others of its kind. */
const turned = ({ waiting, turns }: OvenContext, loaf: string, turn: Turn) => {
  const said = { ...turns, [loaf]: turn };
  return { turns: said, waiting: inTurn(without(waiting, loaf).concat(loaf), said) };
};

/** Whether the loaf that goes in first was told to bake flat. */
const isFlat = ({ turns, waiting }: OvenContext): boolean => turns?.[waiting[0] ?? ''] === 'flat';

const completes = (
  { context, event }: { context: OvenContext; event: OvenEvent },
  list: OvenList,
) =>
  event.type === 'answer' &&
  itemsOf(list, context).every((item) =>
    closes(list, item, item === event.item ? event.value : context.answers[item]),
  );

export const ovenSetup = setup({
  types: {
    context: {} as OvenContext,
    events: {} as OvenEvent,
    meta: {} as StageMeta,
  },
  actions: {
    enter: assign(({ context, event }, { stage }: { stage: OvenStage }) => ({
      entered: { ...context.entered, [stage]: 'at' in event ? event.at : 0 },
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
    /** No stage of the oven's own begins. */
    rest: assign(({ context }) => ({
      byDue: false,
      answers: {},
      marks: {},
      tasks: onlyDone(context.tasks),
    })),
    queue: assign(({ context, event }) => {
      if (event.type !== 'sync') return {};
      const { waiting, vessel, soon, rack } = event;
      const again = vessel === context.vessel ? {} : { madeReady: undefined };
      return { waiting, vessel, soon, rack, ...again };
    }),
    heat: assign(({ event }) =>
      event.type === 'ovenOn' && event.lanes !== undefined
        ? { lanes: event.lanes, holds: event.holds }
        : {},
    ),
    drop: assign(({ context, event }) =>
      event.type === 'potOut' ? { lanes: without(context.lanes ?? [], event.item) } : {},
    ),
    /** Where pots are told apart a round follows the other closely: its list is gone through once. */
    makeReady: assign(({ context }) => (context.lanes === undefined ? {} : { madeReady: true })),
    putIn: assign(({ context, event }) =>
      event.type === 'loaded'
        ? { waiting: context.waiting.filter((loaf) => !event.loaves.includes(loaf)) }
        : {},
    ),
    takeOut: assign(({ context, event }) =>
      event.type === 'cameOut' ? { out: [...context.out, ...event.loaves] } : {},
    ),
    turn: assign(({ context, event }) =>
      event.type === 'loafFirst' || event.type === 'loafLater'
        ? turned(context, event.item ?? '', event.type === 'loafFirst' ? 'first' : 'later')
        : {},
    ),
    setAside: assign(({ context }) =>
      context.lanes === undefined ? {} : turned(context, context.waiting[0] ?? '', 'later'),
    ),
    flatten: assign(({ context }) => turned(context, context.waiting[0] ?? '', 'flat')),
    /** It was to bake flat, had to wait, and goes into a pot after all. */
    unflatten: assign(({ context }) =>
      isFlat(context) ? turned(context, context.waiting[0] ?? '', 'first') : {},
    ),
    keepTask: assign(({ context, event }) =>
      event.type === 'taskKept' ? { tasks: taskKept(context.tasks, event.task, event.at) } : {},
    ),
    /** Every bake has seen its loaves out by now; the next firing has its pots and tasks anew. */
    forget: assign({
      out: [],
      tasks: {},
      lanes: undefined,
      holds: undefined,
      turns: undefined,
      madeReady: undefined,
    }),
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
    completes: (all, { list }: { list: OvenList }) => completes(all, list),
    completesFlat: (all, { list }: { list: OvenList }) =>
      isFlat(all.context) && completes(all, list),
    isAsked: ({ context, event }, { list }: { list: OvenList }) =>
      event.type === 'answer' &&
      event.value !== undefined &&
      itemsOf(list, context).includes(event.item ?? ''),
    arePots: ({ event }) => event.type === 'ovenOn' && arePots(event.lanes),
    someWait: ({ event }) => event.type === 'sync' && event.waiting.length > 0,
    someCome: ({ event }) => event.type === 'sync' && (event.waiting.length > 0 || event.soon),
    calledFor: ({ event }) => event.type === 'sync' && event.soon && event.called,
    noneCome: ({ event }) =>
      event.type === 'sync' && event.waiting.length === 0 && !event.soon && !event.rack.full,
    noneYet: ({ event }) =>
      event.type === 'sync' &&
      event.waiting.length === 0 &&
      event.soon &&
      !event.rack.full &&
      !event.rack.reheats,
    noneFits: ({ event }) =>
      event.type === 'sync' && (event.waiting.length === 0 || !event.rack.free),
    oneFits: ({ event }) => event.type === 'sync' && event.waiting.length > 0 && event.rack.free,
    moreWait: ({ context }) => context.waiting.length > 0,
    madeReady: ({ context }) => context.madeReady === true,
    othersWait: ({ context }) => othersAreFresh(context),
    freshCome: ({ context, event }) =>
      event.type === 'sync' &&
      context.lanes !== undefined &&
      event.waiting.some((loaf) => !isLater(context, loaf)),
    mayTurn: ({ context, event }) =>
      (event.type === 'loafFirst' || event.type === 'loafLater') &&
      context.waiting.includes(event.item ?? ''),
    notFlat: ({ context }) => !isFlat(context),
    /** The last pot stays: what waits has to bake in something. */
    mayDrop: ({ context, event }) =>
      event.type === 'potOut' &&
      (context.lanes ?? []).includes(event.item ?? '') &&
      (context.lanes ?? []).length > 1,
    fits: ({ context, event }) => isLoad(context.waiting, event),
    fitsMore: ({ context, event }) =>
      isLoad(context.waiting, event) && event.type === 'loaded' && event.more,
    /** What was made ready is for another kind of load: look at this one first. */
    otherVessel: ({ context, event }) => event.type === 'sync' && event.vessel !== context.vessel,
    mayCall: ({ context, event }) => event.type === 'lead' && mayCall(context, event.task),
    isTask: ({ context, event }) => event.type === 'taskDone' && isOpen(context, event.item ?? ''),
  },
});
