import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { metaOf, stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { CallKind } from '../../../machines/ports.ts';
import { EQUIPMENT, type Equipment } from '../../core/kitchen/equipment.ts';
import type { Deed } from '../../core/records/fact.ts';
import type { NumberSlot } from '../../core/records/reading-slot.ts';
import type { BakeStage, Hazard, OvenStage } from '../../core/records/stage.ts';
import { isTicked } from '../../core/records/ticked.ts';
import { asksRise } from '../../core/records/task.ts';
import type { countdown } from '../../core/speech/words/running.ts';
import { several } from '../../core/speech/words/several.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import type { StageWords } from '../../core/speech/words.ts';
import type { Instant, Units } from '../../core/units.ts';
import { ACTS } from './acts.ts';
import { factsOf } from './facts-of.ts';
import { bowlsLine } from './bowls-view.ts';
import { earlyPress } from './early.ts';
import { areSeveral, bakeName } from '../bake-name.ts';
import { atItsBake, type Focus } from '../focus.ts';
import { careOf } from './care-of.ts';
import type { questionView } from './question-view.ts';
import { loavesOver } from './gone-over.ts';
import { leftView } from './left-view.ts';
import { loafLost } from './loaf-lost.ts';
import { noteView } from './note-view.ts';
import { pieceAdvice } from './piece-advice.ts';
import { placeOf } from './place-of.ts';
import { pressOf } from './press-of.ts';
import { aheadOf, taskTiles, taskView } from './task-view.ts';
import { waitDetail, warmPlaceWords } from './wait-detail.ts';
import { besideLines, weighView } from './weigh-view.ts';
import { waitsOf, wordsOf } from './words-of.ts';

/** Something to press, and the deed it stands for. */
export interface Press {
  readonly label: string;
  readonly deed: Deed;
}

/** What the third control does here; null where its place is kept for reading on. */
export type Third = 'reading' | 'ready' | 'why' | 'weigh' | 'probe' | 'sheet' | 'clock' | 'pots';

/** One line of a weigh card. */
export interface Line {
  readonly label: string;
  readonly state: 'done' | 'now' | 'next' | 'told';
}

/** Everything the Bench shows of one act, as plain data. `slab.deed` null: the keypad opens. */
export interface BenchView {
  readonly who: string;
  /** The bake it is about: of the loaf in the pot, or that goes in next, whichever bench shows it. */
  readonly bake: string;
  readonly stage: string;
  /** The task of its wait that is shown in its place. */
  readonly task: string | null;
  readonly place: string;
  /** Whose act it is: the bake's short name where more than one runs, else null. */
  readonly whose: string | null;
  readonly headline: string;
  readonly detail: string;
  readonly care: string | null;
  readonly spoken: string;
  /** Said before it where the last answer of a checklist led here. */
  readonly closing: string | null;
  readonly slab: { readonly label: string; readonly then: string; readonly deed: Deed | null };
  readonly tiles: readonly Press[];
  /** How many of the wait's tasks may be done before they call. */
  readonly ahead: number;
  readonly third: Third | null;
  readonly lines: readonly Line[];
  /** Which of how many, where a list is asked. */
  readonly progress: { readonly done: number; readonly of: number } | null;
  readonly deadline: Instant | null;
  readonly waits: keyof typeof countdown | null;
  readonly window: { earliest: Instant; likely: Instant | null; latest: Instant } | null;
  readonly call: CallKind | null;
  /** When the call began; its overdue time counts up from there. */
  readonly since: Instant | null;
  readonly hazard: Hazard;
  /** What the keypad that opens straight from here takes. */
  readonly measures: NumberSlot;
  /** At a look: the deed of "it's ready", whatever the signs say. */
  readonly ready: Deed | null;
  /** In a wait that ends in a look: the same deed, before it. */
  readonly early: Deed | null;
  /** A number to hit, told beside the act: measured-view.ts. */
  readonly target: {
    readonly value: string;
    readonly label: string;
    readonly range: string | null;
    /** The page that one press beside it opens. */
    readonly opens: 'why' | 'feedHour';
  } | null;
}

type Further = 'lines' | 'progress' | 'spoken' | 'closing' | 'care' | 'ready' | 'hazard' | 'third';
/** The parts of a view that a list, a look or a plain act decides. */
export type Asked = Pick<BenchView, 'headline' | 'detail' | 'slab' | 'tiles'> &
  Partial<Pick<BenchView, Further>>;

const plain = (
  kitchen: Kitchen,
  focus: Focus,
  stage: string,
  words: StageWords,
  units: Units,
  equipment: Equipment,
): Asked => {
  const act = ACTS[stage as BakeStage | OvenStage];
  const keysIn = act === undefined || stage === 'mix.temperature';
  return {
    headline: words.headline,
    detail: pieceAdvice(focus, stage, units) ?? loafLost(focus, stage, units) ?? words.detail,
    slab: {
      label: words.slab,
      then: words.then,
      deed: keysIn ? null : pressOf(kitchen, focus, act, equipment),
    },
    tiles: [],
  };
};

/** Numbers that one press leads to, at the step where scale or probe is at hand. */
const WEIGHS: Readonly<Record<string, NumberSlot>> = {
  'mix.work': 'weight.dough',
  'shape.divide': 'weight.piece',
  'shape.scoop': 'weight.piece',
  'cool.handOver': 'weight.loaf',
  judge: 'coreTemperature',
};

const thirdOf = ({ bake }: Focus, stage: string, look: boolean): Third | null => {
  if (stage === 'read.plan') return null;
  if (look) return 'ready';
  if (stage === 'lift' || stage === 'vent') return 'why';
  if (stage === 'mix.temperature') return 'probe';
  if (stage in WEIGHS) return 'weigh';
  if (stage === 'bulk.scatter') return 'sheet';
  // A bake that is over takes no reading.
  return bake.status === 'done' ? null : 'reading';
};

/** Whether a stage asks what only the checklists' catalogue can word. */
export const asksList = ({ machine }: Focus): boolean => {
  const { list } = metaOf(machine);
  return list !== undefined && !isTicked(list);
};

/**
 * What the bench shows for a bake, or for the oven while it has the loaves. Pure. `lists` words the
 * checklists; null while it is not loaded: then a list's stage has its own words and no answers. `equipment` decides
 * how many loaves the load press takes. `bench`: its act, which may be at another bake's loaf: then words, facts and
 * cautions are that bake's, and the place names both. `now` says how long it all has been left.
 */
export function benchView(
  kitchen: Kitchen,
  bench: Focus,
  hour: (at: Instant) => string,
  lists: typeof questionView | null,
  units: Units,
  equipment: Equipment = EQUIPMENT,
  now: Instant = kitchen.now,
): BenchView {
  const focus = atItsBake(kitchen, bench);
  const { who, machine } = focus;
  const stage = stageOf(machine);
  const meta = metaOf(machine);
  const words = wordsOf(kitchen, focus, stage, equipment);
  const task = taskView(kitchen, focus, equipment);
  const facts = factsOf(kitchen, focus, hour, equipment, task?.task ?? null);
  const left = leftView(kitchen, bench, stage, Math.max(now, kitchen.now));
  const asked =
    task ??
    left ??
    weighView(focus, units, equipment) ??
    (meta.list && lists
      ? lists(focus, meta.list, loavesOver(kitchen, focus.bake.context.id), kitchen, {
          height: equipment.height ?? 0,
          units,
        })
      : null) ??
    noteView(focus, stage) ??
    plain(kitchen, focus, stage, words, units, equipment);
  const { marks } = machine.context;
  const rings = kitchen.attention.context.calls.find((c) => c.who === who && c.stage === stage);
  const show = (template: string) => fill(template, shown(facts, units));
  const warm = (write: typeof shown) =>
    warmPlaceWords(focus, Math.max(now, kitchen.now), hour, (of) => write(of, units));
  const bowls = task || left ? null : bowlsLine(focus, stage, equipment, hour, units);
  const whose = areSeveral(kitchen) ? bakeName(kitchen, bench.bake.context.id, hour) : null;
  const place = show(placeOf(kitchen, bench, stage, hour, whose !== null));
  return {
    who,
    bake: focus.bake.context.id,
    stage,
    place: whose === null ? place : fill(several.place, { bake: whose, place }),
    whose,
    headline: show(asked.headline),
    detail: [show(task ? asked.detail : waitDetail(asked.detail, focus, warm(shown))), bowls?.shown]
      .filter(Boolean)
      .join(' '),
    care:
      asked.care ??
      careOf(kitchen, focus, stage, words.care ? show(words.care) : null, equipment, units, hour),
    spoken:
      (task ? fill(task.spoken, said(facts, units)) : asked.spoken) ??
      [fill(words.spoken, said(facts, units)), warm(said), bowls?.said].filter(Boolean).join(' '),
    closing: asked.closing ?? null,
    slab: { ...asked.slab, label: show(asked.slab.label), then: show(asked.slab.then) },
    tiles: [...asked.tiles, ...(task ? [] : taskTiles(focus))].map((tile) => ({
      ...tile,
      label: show(tile.label),
    })),
    ahead: task ? 0 : aheadOf(focus).length,
    third: asked.third ?? thirdOf(focus, stage, asked.ready !== undefined),
    lines: asked.lines ?? besideLines(focus, stage, units, equipment),
    progress: asked.progress ?? null,
    deadline: deadlineOf(machine),
    waits: waitsOf(kitchen, focus, equipment),
    window:
      task === null && marks['earliest'] !== undefined && marks['latest'] !== undefined
        ? { earliest: marks['earliest'], likely: marks['likely'] ?? null, latest: marks['latest'] }
        : null,
    call: task ? 'look' : (rings?.kind ?? null),
    since: task?.since ?? rings?.since ?? null,
    task: task?.task ?? null,
    hazard: asked.hazard ?? meta.hazard ?? 'none',
    measures: asksRise(task?.task ?? null) ? 'rise.dough' : (WEIGHS[stage] ?? 'doughTemperature'),
    ready: asked.ready ?? null,
    early: task === null && left === null ? earlyPress(focus, stage) : null,
    target: null,
  };
}
