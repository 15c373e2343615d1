import { dayRoom, type RoomAsk } from '../../../core/circle/day-room.ts';
import { earlyOrders } from '../../../core/circle/early-orders.ts';
import { bakingMinutes, ovenDay } from '../../../core/circle/oven-day.ts';
import { loadsPage } from '../../../core/speech/words/circle-oven.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import type { Clock } from '../../../core/speech/show-time.ts';
import { tellMinute } from '../../../core/speech/tell-room.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { MINUTE, type Units } from '../../../core/units.ts';

/** One load on the page. */
export interface LoadShown {
  readonly in: string;
  readonly out: string;
  readonly what: string;
  readonly cool: string;
}

export interface LoadsShown {
  readonly detail: string;
  readonly loads: readonly LoadShown[];
  /** What is told besides: hours that end before, loads that are not shown, orders fetched early. */
  readonly told: readonly string[];
}

/** Loads on a page: more are no home oven's day. Judgement. */
const MOST = 60;

/** The loads of a day in order, with hours where the oven's are said. */
export function loadsShown(ask: RoomAsk, units: Units, clock: Clock): LoadsShown {
  const { taken, has, from } = dayRoom(ask);
  const bakes = taken.filter(({ places }) => places > 0);
  if (bakes.length === 0) return { detail: loadsPage.none, loads: [], told: [] };
  const day = ovenDay(bakes, (from ?? 0) * MINUTE);
  if (from === null) {
    const count = shown({ loaves: bakes.reduce((sum, one) => sum + one.count, 0) })['loaves']!;
    const time = showLength(bakingMinutes(bakes));
    return { detail: fill(loadsPage.noHours, { count, time }), loads: [], told: [] };
  }
  const time = (at: number): string => tellMinute(ask.day, at / MINUTE, clock);
  const name = (bread: string, grams: number): string => {
    const formula = ask.breads.find(({ id }) => id === bread);
    const its = showBread(formula?.name ?? '');
    if (formula?.piece === grams) return its;
    return fill(loadsPage.size, { name: its, grams: showWeight(grams, units) });
  };
  const loads = day.loads
    .slice(0, MOST)
    .map(({ bread, grams, count, from: at, out }): LoadShown => {
      const its = day.breads.find((one) => one.bread === bread && one.grams === grams)!;
      return {
        in: time(at),
        out: time(out),
        what: fill(loadsPage.load, { count, name: name(bread, grams) }),
        cool: time(out + its.coolAt - its.out),
      };
    });
  const early = earlyOrders(ask).length;
  const past = has.oven !== null && bakingMinutes(bakes) > has.oven;
  return {
    detail: fill(loadsPage.detail, { until: time(day.lastOut!), time: time(day.coolAt!) }),
    loads,
    told: [
      ...(past ? [fill(loadsPage.past, { until: time((from + has.oven) * MINUTE) })] : []),
      ...(early > 0 ? [fill(loadsPage.early, { count: early })] : []),
      ...(day.loads.length > MOST
        ? [fill(loadsPage.more, { count: day.loads.length - MOST })]
        : []),
    ],
  };
}
