import type { FillingTrouble } from '../day/plan/perishable.ts';
import type { Change } from '../day/plan/types.ts';
import { MINUTE, type Instant } from '../units.ts';
import { planChanges, planFilling, planTouches, planWaits } from './en/plan.ts';
import { fill } from './fill.ts';
import { showLength } from './lengths.ts';

const NUMBERED = /^(.+?)(?: (\d+))?$/;

const touches: Readonly<Record<string, string>> = planTouches;
const waits: Readonly<Record<string, string>> = planWaits;

/**
 * A touch's name as it is shown: `load 2` → 'Load 2'. One that nobody has words for is shown as it is.
 */
export function tellTouch(name: string): string {
  const [, kind = name, count = ''] = NUMBERED.exec(name) ?? [];
  const template = touches[kind];
  return template === undefined ? name : fill(template, { count });
}

/**
 * A change that alone would do, in sentences: two where a window may give at either end. `time` shows an
 * instant, its day with it where that is needed.
 */
export function tellChange(change: Change, time: (at: Instant) => string): string[] {
  switch (change.change) {
    case 'blocked': {
      const { name, from, to, endEarlierBy, startLaterBy } = change;
      const end = (by: number): string =>
        fill(planChanges.blockedEnd, {
          name,
          length: showLength(by),
          time: time(to - by * MINUTE),
        });
      const start = (by: number): string =>
        fill(planChanges.blockedStart, {
          name,
          length: showLength(by),
          time: time(from + by * MINUTE),
        });
      return [
        ...(endEarlierBy === null ? [] : [end(endEarlierBy)]),
        ...(startLaterBy === null ? [] : [start(startLaterBy)]),
      ];
    }
    case 'due':
      return [fill(planChanges.due, { bake: change.batch, length: showLength(change.laterBy) })];
    case 'start':
      return [fill(planChanges.start, { bake: change.batch, length: showLength(change.laterBy) })];
    case 'longer':
    case 'shorter': {
      const values = { bake: change.batch, length: showLength(change.by) };
      if (change.wait === 'oven on') return [fill(planChanges.hotOven, values)];
      return [
        fill(planChanges[change.change], { ...values, part: waits[change.wait] ?? change.wait }),
      ];
    }
    case 'fewerLoads': {
      const { batch, loads } = change;
      const template = loads === 1 ? planChanges.oneLoad : planChanges.fewerLoads;
      return [fill(template, { bake: batch, count: loads })];
    }
    case 'dropTouch': {
      const { batch, touch } = change;
      if (touch === 'oven on') return [fill(planChanges.ovenTimer, { bake: batch })];
      const its = tellTouch(touch);
      const within = `${its.charAt(0).toLowerCase()}${its.slice(1)}`;
      return [fill(planChanges.dropTouch, { bake: batch, touch: within })];
    }
  }
}

/** Why a filling has no plan, and what would do, each a sentence of its own. */
export function tellFilling({ key, filling, within, wouldDo }: FillingTrouble): string[] {
  const why = fill(planFilling[key], { filling, length: showLength(within) });
  return [why, ...wouldDo.map((one) => planFilling[one])];
}
