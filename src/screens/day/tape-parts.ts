import { LATEST_AND } from '../../core/day/plan/dough-waits.ts';
import type { Batch, PlannedTouch, Step } from '../../core/day/plan/types.ts';
import { touchKey } from '../../core/day/plan/ics.ts';
import { tapeNames, tapeNotes } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { showLength } from '../../core/speech/lengths.ts';
import { tellTouch } from '../../core/speech/tell-plan.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { TapeTouch } from '../../parts/tape-shown.ts';
import type { DayShown, ReadDay } from './day-shown.ts';

/** A place on the tape: a touch, or bread that is ready. */
export interface TapeMark extends Omit<TapeTouch, 'x'> {
  readonly at: Instant;
  /** When the hands are free again. */
  readonly end: Instant;
}
export interface TapeWait {
  readonly from: Instant;
  readonly to: Instant;
  readonly lines: readonly string[];
  readonly window: { readonly from: Instant; readonly to: Instant } | null;
}
export interface TapeLoad {
  readonly at: Instant;
  readonly lid: Instant | null;
  readonly out: Instant;
  readonly label: string;
}

const NUMBERED = /^(.+?)(?: (\d+))?$/;
/** Parts of a load that its lane tells. */
const IN_LANE = /^(lid lift|vent|unload) \d+$/;
/** Longer names go on in a second line. */
const LINE = 7;
const names: Readonly<Record<string, string>> = tapeNames;

/** 'Salt,' and 'water'. */
function linesOf(name: string): readonly string[] {
  const [, kind = name, count = ''] = NUMBERED.exec(name) ?? [];
  const short = fill(names[kind] ?? name, { count });
  const gap = short.lastIndexOf(' ');
  return short.length > LINE && gap > 0 ? [short.slice(0, gap), short.slice(gap + 1)] : [short];
}

/** Everything that has a place of its own, in the order of time. */
export function marksOf({ touches, ready }: DayShown, read: ReadDay): TapeMark[] {
  const marks = touches
    .filter(({ name }) => !IN_LANE.test(name))
    .map((touch): TapeMark => ({
      key: touchKey(touch),
      at: touch.at,
      end: touch.at + touch.hands * MINUTE,
      time: read.hour(touch.at),
      lines: linesOf(touch.name),
      name: `${read.hour(touch.at)}, ${tellTouch(touch.name)}`,
      mark: read.mark(touch.batch),
      stays: touch.frozen || read.stays(touch),
      opens: true,
    }));
  const ends = ready.map(({ batch, at }): TapeMark => ({
    key: `${batch}/ready`,
    at,
    end: at,
    time: read.hour(at),
    lines: [tapeNames.ready],
    name: `${read.hour(at)}, ${tapeNames.ready}`,
    mark: read.mark(batch),
    stays: false,
    opens: false,
  }));
  return [...marks, ...ends].sort((a, b) => a.at - b.at);
}

/** The wait that follows a step of a plan, and the hours in which it may be over. */
function waitOf(
  step: Step,
  isLast: boolean,
  touch: PlannedTouch,
  to: Instant,
  read: ReadDay,
): TapeWait | null {
  const from = touch.at + touch.hands * MINUTE;
  const length = showLength((to - from) / MINUTE);
  const tell = (
    lines: readonly string[],
    limits: { readonly min: number; readonly max: number } | null,
  ): TapeWait => {
    const window = limits && {
      from: from + limits.min * MINUTE,
      to: from + limits.max * MINUTE,
    };
    const hours = window
      ? { time: read.hour(window.from), until: read.hour(window.to) }
      : { time: '', until: '' };
    return { from, to, lines: lines.map((line) => fill(line, { length, ...hours })), window };
  };
  const { wait } = step;
  if ('choices' in wait) {
    const fed = wait.choices.find(({ name }) => name === touch.choice);
    return fed ? tell(tapeNotes.levain, fed) : null;
  }
  const dough = { min: wait.min, max: Math.max(wait.typicalTo, wait.max - LATEST_AND) };
  if (step.name === 'salt and water') return tell(tapeNotes.bulk, dough);
  if ((step.uses?.fridge ?? 0) > 0 && step.uses?.oven === undefined && step.beforeNext)
    return tell(tapeNotes.cold, null);
  if (step.beforeNext) return tell(tapeNotes.proof, dough);
  return isLast ? tell(tapeNotes.cool, null) : null;
}

const ofBatch = (touches: readonly PlannedTouch[], batch: Batch): Map<string, PlannedTouch> =>
  new Map(touches.filter((touch) => touch.batch === batch.name).map((one) => [one.name, one]));

/** The waits that have words. */
export function waitsOf({ touches, ready, batches }: DayShown, read: ReadDay): TapeWait[] {
  return batches.flatMap((batch) => {
    const known = ofBatch(touches, batch);
    const end = ready.find((one) => one.batch === batch.name)?.at;
    return batch.steps.flatMap((step, i) => {
      const touch = known.get(step.name);
      const next = batch.steps[i + 1];
      const to = next ? known.get(next.name)?.at : end;
      if (touch === undefined || to === undefined) return [];
      return waitOf(step, next === undefined, touch, to, read) ?? [];
    });
  });
}

/** What is in the oven, load after load. */
export function loadsOf({ touches, batches }: DayShown, read: ReadDay): TapeLoad[] {
  return batches.flatMap((batch) => {
    const known = ofBatch(touches, batch);
    return [...known.values()].flatMap(({ name, at }): TapeLoad[] => {
      const [, kind, count] = NUMBERED.exec(name) ?? [];
      const out = known.get(`unload ${count}`)?.at;
      if (kind !== 'load' || out === undefined) return [];
      const lid = known.get(`lid lift ${count}`)?.at ?? null;
      const vent = known.get(`vent ${count}`)?.at ?? null;
      const template =
        lid !== null ? tapeNotes.lid : vent !== null ? tapeNotes.vent : tapeNotes.out;
      const middle = lid ?? vent;
      const hours =
        middle === null
          ? { time: read.hour(out) }
          : { time: read.hour(middle), until: read.hour(out) };
      return [{ at, lid: middle, out, label: fill(template, hours) }];
    });
  });
}
