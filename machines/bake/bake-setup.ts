import { assign } from 'xstate';
import type { Doubt } from '../../src/core/clock/doubt.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { BakeAct, Reading } from '../../src/core/records/fact.ts';
import { closes, LISTS } from '../../src/core/records/lists.ts';
import { slotOf } from '../../src/core/records/reading-slot.ts';
import type { BakePlace } from '../../src/core/records/position.ts';
import type { BakeStage, ListName } from '../../src/core/records/stage.ts';
import { isTicked, tickedLines } from '../../src/core/records/ticked.ts';
import { isWarm } from '../../src/core/formula/is-warm.ts';
import type { Belief } from '../../src/core/readiness/belief.ts';
import type { Celsius, Instant } from '../../src/core/units.ts';
import type { SayEffect, StageMeta } from '../meta.ts';
import {
  isOpen,
  onlyDone,
  taskCalled,
  taskDone,
  waitJudged,
  mayCall,
  withoutTasks,
} from '../tasks.ts';
import { setup } from '../setup.ts';

/** What a bake is pinned to by its first fact. */
export interface BakeInput {
  readonly id: string;
  readonly start: string;
  readonly startedAt: Instant;
  readonly loaves: readonly string[];
  readonly recipe: Recipe;
  readonly kitchen: Celsius;
  readonly belief: Belief;
}

export type BakeContext = BakeInput &
  Omit<BakePlace, 'stage' | 'start' | 'loaves' | 'doubt'> & { readonly doubt?: Doubt | undefined };

export type BakeEvent =
  | { type: Exclude<BakeAct, 'fewer'>; at: Instant; item?: string; value?: string }
  | { type: 'fewer'; at: Instant; loaves: readonly string[] }
  | { type: 'due'; at: Instant }
  | { type: 'lead'; at: Instant; task: string }
  | { type: 'sync'; at: Instant; out: readonly string[] }
  | { type: 'reading'; at: Instant; reading: Reading }
  | { type: 'corrected'; at: Instant; measured: Instant; reading: Reading }
  | {
      type: 'judged';
      at: Instant;
      marks: Readonly<Record<string, Instant>>;
      belief?: Belief;
      doubt?: Doubt;
    };

const keepsMarks = (stage: BakeStage, event: BakeEvent['type']): boolean =>
  stage.endsWith('look') || stage === 'proof.poke' || (stage === 'proof.soon' && event === 'due');

/** On a press that goes on out of a wait, past the look at its end. */
export const looked = <S extends BakeStage>(stage: S) =>
  ({ type: 'looked', params: { stage } }) as const;

/** Items that a list must have answered before the stage is left. */
export const itemsOf = (recipe: Recipe, list: ListName): readonly string[] =>
  isTicked(list) ? tickedLines(recipe, list).map((line) => line.item) : LISTS[list];

const allWorked = ({ recipe, answers }: BakeContext): boolean =>
  itemsOf(recipe, 'worked').every((item) => closes('worked', item, answers[item]));

export const bakeSetup = setup({
  types: {
    context: {} as BakeContext,
    events: {} as BakeEvent,
    input: {} as BakeInput,
    meta: {} as StageMeta,
  },
  actions: {
    /**
     * Marks of an earlier wait are cleared on entry; the looks keep theirs to show the window, and
     * so does the end of a warm proof that time led into: it is the same wait.
     */
    enter: assign(({ context, event }, { stage }: { stage: BakeStage }) => ({
      entered: { ...context.entered, [stage]: 'at' in event ? event.at : context.startedAt },
      byDue: event.type === 'due',
      answers: {},
      marks: keepsMarks(stage, event.type) ? withoutTasks(context.marks) : {},
      doubt: keepsMarks(stage, event.type) ? context.doubt : undefined,
      tasks: onlyDone(context.tasks),
    })),
    /** Called ready out of its wait: it was looked at, in the same press, as if that had been its own. */
    looked: assign(({ context, event }, { stage }: { stage: BakeStage }) =>
      'at' in event ? { entered: { ...context.entered, [stage]: event.at } } : {},
    ),
    effect: (_, _params: SayEffect) => undefined,
    answer: assign(({ context, event }) =>
      event.type === 'answer'
        ? { answers: { ...context.answers, [event.item ?? '']: event.value ?? '' } }
        : {},
    ),
    /** Loaves keep their order, whatever order those that remain are named in. */
    giveUp: assign(({ context, event }) =>
      event.type === 'fewer'
        ? { loaves: context.loaves.filter((loaf) => event.loaves.includes(loaf)) }
        : {},
    ),
    touched: assign(({ context }) => ({ touches: context.touches + 1 })),
    /** A corrected reading replaces the old one but never stands in for the measuring itself. */
    read: assign(({ context, event }) =>
      event.type === 'reading' || event.type === 'corrected'
        ? {
            readings: {
              ...context.readings,
              [slotOf(event.reading)]: {
                at: event.type === 'corrected' ? event.measured : event.at,
                reading: event.reading,
              },
            },
          }
        : {},
    ),
    judge: assign(({ context, event }) =>
      event.type === 'judged'
        ? {
            ...waitJudged(context, event.marks),
            belief: event.belief ?? context.belief,
            doubt: event.doubt,
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
    /** Would this answer be the list's last? A list of nothing has none. */
    completes: ({ context, event }, { list }: { list: ListName }) => {
      const items = itemsOf(context.recipe, list);
      return (
        event.type === 'answer' &&
        items.length > 0 &&
        items.every((item) =>
          closes(list, item, item === event.item ? event.value : context.answers[item]),
        )
      );
    },
    /** Nothing to scatter, or all of it in one press, as it was done before fillings were ticked. */
    noneTicked: ({ context }) => itemsOf(context.recipe, 'filling').length === 0,
    allWorked: ({ context }) => allWorked(context),
    allWorkedWarm: ({ context }) => allWorked(context) && isWarm(context.recipe.process),
    isAsked: ({ context, event }, { list }: { list: ListName }) =>
      event.type === 'answer' &&
      event.value !== undefined &&
      itemsOf(context.recipe, list).includes(event.item ?? ''),
    measuresDough: ({ event }) =>
      event.type === 'reading' && event.reading.what === 'doughTemperature',
    measuresDoughWithTouches: ({ context, event }) =>
      event.type === 'reading' &&
      event.reading.what === 'doughTemperature' &&
      context.recipe.process.touches.length > 0,
    isWarm: ({ context }) => isWarm(context.recipe.process),
    straightIn: ({ context: { marks, entered } }) =>
      (marks['fridge'] ?? Infinity) <= (entered['shape.basket'] ?? 0),
    isScooped: ({ context }) => context.recipe.process.shaping === 'scoop',
    /** A look comes before the oven has to go on. */
    looksFirst: ({ context: { marks } }) => (marks['look'] ?? 0) < (marks['oven'] ?? 0),
    ovenWanted: ({ context }) => 'proof.soon' in context.entered,
    hasTouches: ({ context }) => context.touches < context.recipe.process.touches.length,
    hasMoreTouches: ({ context }) => context.touches + 1 < context.recipe.process.touches.length,
    nextIsFold: ({ context }) => context.recipe.process.touches[context.touches]?.kind === 'fold',
    /** Some of its own loaves, each once, and fewer than there are. */
    remain: ({ context, event }) =>
      event.type === 'fewer' &&
      event.loaves.length > 0 &&
      event.loaves.length < context.loaves.length &&
      new Set(event.loaves).size === event.loaves.length &&
      event.loaves.every((loaf) => context.loaves.includes(loaf)),
    mayCall: ({ context, event }) => event.type === 'lead' && mayCall(context, event.task),
    isTask: ({ context, event }) => event.type === 'taskDone' && isOpen(context, event.item ?? ''),
    allOut: ({ context, event }) =>
      event.type === 'sync' && context.loaves.every((loaf) => event.out.includes(loaf)),
  },
});
