import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { metaOf } from '../../../../machines/kitchen/stage-of.ts';
import type { BakeStage, OvenStage } from '../../../core/records/stage.ts';
import type { Task } from '../../../core/records/task.ts';
import { sketchOf } from '../../../core/sketches/of-stage.ts';
import type { Sketch } from '../../../core/sketches/sketches.ts';
import type { Ages } from '../../../core/small/ages.ts';
import { guardOf, isGated } from '../../../core/small/guard.ts';
import { mayDo } from '../../../core/small/may-do.ts';
import { smallWords, type SmallStep, type SmallWords } from '../../../core/small/small-words.ts';
import { small as words, type countGame } from '../../../core/speech/words/small.ts';
import type { Instant } from '../../../core/units.ts';
import { atItsBake, type Focus } from '../../focus.ts';
import type { Ways } from '../../house.ts';
import type { BenchView, Press } from '../view.ts';
import { faceOf, isScattered } from './face-of.ts';

/** What is tapped one by one as it is done. */
export interface Game {
  readonly kind: Exclude<keyof typeof countGame, 'nth'>;
  readonly count: number;
}

/** One step as a child of these ages meets it, as plain data. */
export interface SmallView extends SmallWords {
  readonly sketch: Sketch;
  /** Whether the big press is the child's; else a grown-up holds it. */
  readonly presses: boolean;
  /** The first step with raw dough or flour since this bake began: said once, kindly. */
  readonly raw: boolean;
  /** When its wait began, and when it is likely over; null: nothing is waited for. */
  readonly wait: { readonly from: Instant; readonly to: Instant } | null;
  readonly game: Game | null;
  /** What a child's own mark is for here. */
  readonly mark: 'shape' | 'find' | null;
}

/** More of them have no room, and are no game any more. */
const MOST = 4;

const gameOf = (stage: string, loaves: number): Game | null => {
  if (stage === 'bulk.fold') return { kind: 'corners', count: 4 };
  const kind = { 'shape.divide': 'pieces', 'shape.preshape': 'rounds', 'shape.basket': 'baskets' };
  const found = kind[stage as keyof typeof kind] as Game['kind'] | undefined;
  return found && loaves > 1 && loaves <= MOST ? { kind: found, count: loaves } : null;
};

const MARKS: Readonly<Record<string, SmallView['mark']>> = {
  'shape.finalShape': 'shape',
  'shape.scoop': 'shape',
  'cool.cooling': 'find',
  'cool.handOver': 'find',
};

/** Stages with raw flour or dough, in the order they come. */
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

/** Whether raw dough is met here for the first time in this bake. */
const isFirstRaw = ({ machine }: Focus, view: BenchView): boolean =>
  view.task === null &&
  metaOf(machine).hazard === 'raw' &&
  !RAW.some((stage) => stage !== view.stage && stage in machine.context.entered);

/**
 * What a child of these ages is shown of the act on the bench. Pure. `bench`: the act's focus, as its
 * view was made of it.
 */
export function smallView(ages: Ages, kitchen: Kitchen, bench: Focus, view: BenchView): SmallView {
  const focus = atItsBake(kitchen, bench);
  const { machine, bake } = focus;
  const stage = view.stage as BakeStage | OvenStage;
  const task = view.task as Task | null;
  const from = machine.context.entered[stage];
  const to = view.window?.likely ?? view.deadline;
  const isWait = task === null && view.deadline !== null && from !== undefined && to !== null;
  const step = task ?? stage;
  const safe = task === null && !isGated(view.hazard);
  return {
    ...smallWords(ages, step),
    sketch: sketchOf(stage, task),
    presses: mayPress(ages, view),
    raw: isFirstRaw(focus, view),
    wait: isWait ? { from, to } : null,
    game: safe ? gameOf(stage, bake.context.loaves.length) : null,
    mark: safe ? (MARKS[stage] ?? null) : null,
  };
}

/** Whether the big press of this step is a child's. */
export const mayPress = (small: Ways['small'], view: BenchView): boolean => {
  const { task, stage, hazard } = view;
  const step = (task ?? stage) as SmallStep;
  return small === 'off' || mayDo(guardOf(step, task === null ? hazard : 'none'), small).presses;
};

/** Whether the press of a wait's task is a child's. */
export const isChilds = (ages: Ages, { deed }: Press): boolean =>
  deed.kind === 'press' && mayDo(guardOf(deed.item as SmallStep), ages).presses;

/** How much of a wait is over, 0 to 1. */
export const shareOf = ({ from, to }: NonNullable<SmallView['wait']>, now: Instant): number =>
  to <= from ? 1 : Math.min(1, Math.max(0, (now - from) / (to - from)));

/**
 * What is said of an act: a child's own in its words, after them the usual words of what is hot, and what
 * is asked of the baker as ever. Cautions are said behind it by whoever says it.
 */
export function smallSaid(
  small: Ways['small'],
  kitchen: Kitchen,
  focus: Focus,
  view: BenchView,
): string {
  const face = faceOf(small, view);
  if (small === 'off' || face === 'baker' || (face === 'beside' && !isGated(view.hazard)))
    return view.spoken;
  const told = smallView(small, kitchen, focus, view);
  if (face === 'beside') return `${told.act}. ${view.spoken}`;
  // What is weighed is the baker's to hear.
  const weighed = isScattered(view) ? view.spoken : '';
  return [`${told.act}.`, told.say, told.raw ? words.raw : '', weighed].filter(Boolean).join(' ');
}
