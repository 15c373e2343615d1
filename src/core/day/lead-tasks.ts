import { fillsAtShape } from '../formula/filled-at-shape.ts';
import type { Filling, Preparation } from '../formula/formula.ts';
import { prepareOf } from '../formula/prepare-of.ts';
import type { Recipe } from '../formula/recipe.ts';
import type { BakeStage, OvenStage } from '../records/stage.ts';
import type { Task } from '../records/task.ts';
import { MINUTE, type Instant, type Minutes } from '../units.ts';
import { counterMinutes } from './counter-minutes.ts';
import type { WaitInput } from './waits.ts';

/**
 * Minutes before it is needed that a task is called. Toasting takes 10 min and cooling 30; cheese
 * out of the fridge loses its chill in an hour; loaves stay in the fridge until the oven is nearly hot;
 * the rest is handwork. Common practice, no source.
 */
const BEFORE: Readonly<
  Record<
    Exclude<Task, 'tidyMix' | 'tidyBulk' | 'tidyBench' | 'rise45' | 'rise70' | 'rise85'>,
    Minutes
  >
> = {
  soak: 120,
  takeOut: 60,
  toast: 45,
  drain: 40,
  cut: 25,
  coat: 15,
  bench: 3,
  baskets: 10,
  grease: 10,
  shelf: 10,
  parchment: 15,
  kettle: 10,
  fetch: 10,
  rack: 5,
};
type Timed = keyof typeof BEFORE;

/** How a filling is made ready calls its task of the same name. */
const PREPARED: readonly (Preparation & Timed)[] = ['soak', 'toast', 'drain', 'cut', 'coat'];

const fillingTasks = (fillings: readonly Filling[]): Timed[] => [
  ...PREPARED.filter((how) => fillings.some((filling) => prepareOf(filling).includes(how))),
  // Only what may stand leaves the fridge early; what spoils stays in it until it goes in.
  ...(fillings.some(({ keeps }) => keeps === 'hardCheese') ? (['takeOut'] as const) : []),
];

/** When the next sheet is spread, reckoned from a wait of the bulk that begins at `now`; null: none comes. */
const spreadAt = ({ touches }: Recipe['process'], done: number, now: Instant): Instant | null => {
  const next = touches.findIndex(({ kind }, i) => i >= done && kind === 'laminate');
  if (next < 0) return null;
  const minutes = touches.slice(done, next + 1).reduce((sum, { after }) => sum + after, 0);
  return now + minutes * MINUTE;
};

/**
 * What the loaves' filling asks for where it goes in as they get their shape, by then at the earliest: when
 * the dough may be ready, and its bench rest behind that. The minutes that dividing takes are left to spare.
 */
const forShape = (
  { stage, recipe }: WaitInput,
  end: Instant,
  ready: Instant,
): readonly (readonly [Timed, Instant])[] => {
  if (!fillsAtShape(recipe)) return [];
  const rests = recipe.process.benchRest * MINUTE;
  const at =
    stage === 'bulk.between'
      ? Math.max(ready, end) + rests
      : stage === 'bulk.proving'
        ? end + rests
        : end;
  return fillingTasks(recipe.formula.fillings).map((task) => [task, at] as const);
};

/** What is wanted ready in this wait, and by when. */
const wanted = (
  input: WaitInput,
  end: Instant,
  ready: Instant,
): readonly (readonly [Timed, Instant])[] => {
  const { stage, now, recipe, touches } = input;
  const { process, formula } = recipe;
  const by = (at: Instant, ...tasks: Timed[]) => tasks.map((task) => [task, at] as const);
  if (stage === 'levain.ripening') {
    // A soaker is put on in good time; it may wait, in the fridge once it is soft.
    return by(end, ...fillingTasks(formula.fillings).filter((task) => task === 'soak'));
  }
  if (stage === 'bulk.between') {
    const spread = spreadAt(process, touches, now);
    if (spread === null) return forShape(input, end, ready);
    return by(spread, ...fillingTasks(formula.fillings), 'bench');
  }
  if (stage === 'bulk.proving') {
    const scoops = process.shaping === 'scoop';
    return [...forShape(input, end, ready), ...(scoops ? by(end, 'grease') : [])];
  }
  if (stage === 'shape.benchRest') {
    const soon = process.retard > 0 && counterMinutes({ ...input, now: end }) < BEFORE.shelf;
    const shelf = soon ? ['shelf' as const] : [];
    return [
      ...forShape(input, end, ready),
      ...by(end, process.vessel === 'tin' ? 'grease' : 'baskets', ...shelf),
    ];
  }
  if (stage === 'proof.counter') return by(end, 'shelf');
  if (stage === 'preheating' || stage === 'recover') {
    const isCold = process.retard > 0 && input.takenOut === undefined;
    return by(
      end,
      ...(process.vessel === 'tin' ? [] : (['parchment'] as const)),
      ...(process.vessel === 'stone' ? (['kettle'] as const) : []),
      ...(isCold ? (['fetch'] as const) : []),
    );
  }
  return stage === 'open' ? by(end, 'rack') : [];
};

/** Hands are free when a rest begins: what stands about is cleared away then, and not after every look. */
const TIDY: Readonly<Partial<Record<BakeStage | OvenStage, Task>>> = {
  'mix.rest': 'tidyMix',
  'bulk.proving': 'tidyBulk',
  'shape.benchRest': 'tidyBench',
};

type Due = readonly [Task, Instant];

/** Tasks that stand beside a running time at once, and minutes after which the next one calls. Judgement. */
const AT_ONCE = 2;
const TURN: Minutes = 4;

/** The longest work, which stands first here, is asked for first. */
const lead = ([task]: Due): Minutes => BEFORE[task as Timed] ?? 0;

/**
 * Of many that are due as the wait begins the first ones stand beside its time; the others call in
 * their turn, as far as the wait goes.
 */
const inTurn = (all: readonly Due[], now: Instant, end: Instant): readonly Due[] => {
  const late = all
    .filter(([, at]) => at <= now)
    .toSorted((a, b) => lead(b) - lead(a))
    .slice(AT_ONCE)
    .map(([task]) => task);
  return all.map(([task, at]): Due => {
    const turn = now + (late.indexOf(task) + 1) * TURN * MINUTE;
    return [task, turn < end ? Math.max(at, turn) : at];
  });
};

/**
 * When each task that a wait carries falls due, called early enough before it is needed and never
 * before the wait begins. A task that is needed only after this wait's end `end` is left to the next
 * one; one that is done is not asked again, but for the water that every load's
 * steam needs, and the next loaf. `ready`, in bulk: when the dough may be ready to divide at the earliest.
 */
export function leadTasks(
  input: WaitInput,
  end: Instant,
  ready: Instant = end,
): Readonly<Partial<Record<Task, Instant>>> {
  const { stage, now, done } = input;
  const due = wanted(input, end, ready).flatMap(([task, by]) => {
    const at = Math.max(now, by - BEFORE[task] * MINUTE);
    return at < end ? [[task, at] as const] : [];
  });
  const tidy = input.again ? undefined : TIDY[stage];
  const all: Due[] = [...due, ...(tidy ? [[tidy, now] as const] : [])];
  const again = (task: Task): boolean =>
    stage === 'recover' && (task === 'kettle' || task === 'fetch');
  const open = all.filter(([task]) => again(task) || !done.includes(task));
  return Object.fromEntries(inTurn(open, now, end));
}
