import type { FillingTrouble } from '../day/plan/perishable.ts';
import type { Change } from '../day/plan/types.ts';
import { MINUTE, type Instant } from '../units.ts';
import { planChanges, planFilling, planTouches, planWaits } from './words/plan.ts';
import { fill } from './fill.ts';
import { tongue } from './tongue.ts';
import { showLength } from './lengths.ts';
import { showAway } from './show-away.ts';
import { showBread } from './show-bread.ts';
import { showPart } from './show-part.ts';

/** `load 2`: what it is, and which. */
export const NUMBERED = /^(.+?)(?: (\d+))?$/;

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

/** A touch's name within a sentence: 'Lids off, load 2' → 'lids off, load 2'. */
export function touchWithin(name: string): string {
  const text = tellTouch(name);
  // German begins its nouns large wherever they stand.
  return tongue() === 'de' ? text : `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** When a bake is due, or begins: what it is asked with. */
export interface AskedHours {
  readonly name: string;
  readonly due: Instant | null;
  readonly startAt?: Instant | null;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * A change that alone would do, in sentences: two where a window may give at either end. `time` shows an
 * instant, its day with it where that is needed; `asked`: the hours that the change is against.
 *
 * @throws Error `No hour is asked for x.`
 */
export function tellChange(
  change: Change,
  time: (at: Instant) => string,
  asked: readonly AskedHours[],
): string[] {
  switch (change.change) {
    case 'blocked': {
      const { from, to, endEarlierBy, startLaterBy } = change;
      const name = capital(showBread(change.name));
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
    case 'start': {
      const { batch, laterBy } = change;
      const bake = asked.find(({ name }) => name === batch);
      const hour = change.change === 'due' ? bake?.due : bake?.startAt;
      if (hour === undefined || hour === null) throw new Error(`No hour is asked for ${batch}.`);
      const values = { bake: showBread(batch), time: time(hour + laterBy * MINUTE) };
      return [fill(planChanges[change.change], { ...values, length: showLength(laterBy) })];
    }
    case 'longer':
    case 'shorter': {
      const values = { bake: showBread(change.batch), length: showLength(change.by) };
      if (change.wait === 'oven on') return [fill(planChanges.hotOven, values)];
      return [
        fill(planChanges[change.change], { ...values, part: waits[change.wait] ?? change.wait }),
      ];
    }
    case 'fewerLoads': {
      const { batch, loads } = change;
      const template = loads === 1 ? planChanges.oneLoad : planChanges.fewerLoads;
      return [fill(template, { bake: showBread(batch), count: loads })];
    }
    case 'unpin': {
      const touch = tellTouch(change.touch);
      return [
        fill(planChanges.unpin, { bake: showBread(change.batch), touch, time: time(change.at) }),
      ];
    }
    case 'dropTouch': {
      const { batch, touch } = change;
      if (touch === 'oven on') return [fill(planChanges.ovenTimer, { bake: showBread(batch) })];
      return [fill(planChanges.dropTouch, { bake: showBread(batch), touch: touchWithin(touch) })];
    }
  }
}

/** What stands in the way, in one sentence; none where nothing is named. */
export function tellBecause(because: readonly string[]): string[] {
  const names = [...new Set(because)].map((name) =>
    name === 'planFrom' ? planChanges.planFrom : showAway(showBread(name)),
  );
  return names.length > 0 ? [fill(planChanges.because, { name: names.join(', ') })] : [];
}

/** What stands over so many offers, each of which would do. */
export const tellOffered = (offers: number): string =>
  [planChanges.none, planChanges.one][offers] ?? planChanges.anyOne;

/** Why a filling has no plan, and what would do, each a sentence of its own. */
export function tellFilling({ key, filling, within, wouldDo }: FillingTrouble): string[] {
  const why = fill(planFilling[key], {
    filling: showPart(filling),
    length: showLength(within),
  });
  return [why, ...wouldDo.map((one) => planFilling[one])];
}
