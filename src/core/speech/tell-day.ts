import type { DayPlan } from '../day/laid/day-plan.ts';
import type { PlannedTouch } from '../day/plan/types.ts';
import { DAY, HOUR, type Instant } from '../units.ts';
import { today } from './words/live.ts';
import { said } from './facts.ts';
import { fill } from './fill.ts';
import { showLength } from './lengths.ts';
import { tellTouch } from './tell-plan.ts';

/** How instants are told on this tablet. */
export interface DayClock {
  readonly now: Instant;
  /** The next midnight on its wall. */
  readonly midnight: Instant;
  /** '15:05' or '3:05 pm'. */
  hour(at: Instant): string;
  /** 'Sat'. */
  day(at: Instant): string;
}

/** The next midnight, from the last one: a day of twenty-three or twenty-five hours has one too. */
export const nextMidnight = (now: Instant, midnightOf: (at: Instant) => Instant): Instant =>
  midnightOf(midnightOf(now) + DAY + 6 * HOUR);

/** An hour, and its day where that is another one than today. */
export const hourOrDay = (at: Instant, { now, midnight, hour, day }: DayClock): string =>
  at >= now - 12 * HOUR && at < midnight ? hour(at) : `${day(at)} ${hour(at)}`;

const handsIn = (touches: readonly PlannedTouch[]): number =>
  touches.reduce((sum, { hands }) => sum + hands, 0);

/** What a day looks like, in three sentences, as shown and as said. */
export interface DayTold {
  readonly shown: readonly string[];
  readonly said: readonly string[];
}

/** What today looks like: the next touch, today's hands, and when the next bread is ready. */
export function tellDay(plan: Pick<DayPlan, 'touches' | 'ready'>, clock: DayClock): DayTold {
  const { now, midnight, hour } = clock;
  const ahead = plan.touches.filter(({ at, hands }) => at >= now && hands > 0);
  const ofToday = ahead.filter(({ at }) => at < midnight);
  const [next] = ahead;
  const bread = plan.ready
    .map(({ at }) => at)
    .filter((at) => at >= now)
    .toSorted((a, b) => a - b)[0];
  const hands = handsIn(ofToday);
  const hours = (at: Instant): number => Math.max(1, Math.round((at - now) / HOUR)) * 60;
  const told: { shown: string; said: string | null }[] = [];
  if (next)
    told.push({
      shown: fill(today.first, { touch: tellTouch(next.name), time: hourOrDay(next.at, clock) }),
      said: next.at < midnight ? fill(today.said.next, said({ time: hour(next.at) })) : null,
    });
  told.push(
    ofToday.length === 0
      ? { shown: today.nothing, said: null }
      : {
          shown: fill(ofToday.length === 1 ? today.oneTouch : today.hands, {
            count: ofToday.length,
            length: showLength(hands),
          }),
          said: fill(today.said.hands, said({ minutes: hands })),
        },
  );
  if (bread !== undefined)
    told.push({
      shown: fill(today.bread, { time: hourOrDay(bread, clock) }),
      said:
        bread < midnight
          ? fill(today.said.breadAt, said({ time: hour(bread) }))
          : fill(today.said.breadIn, said({ minutes: hours(bread) })),
    });
  return {
    shown: told.map((one) => one.shown),
    said: told.flatMap((one) => one.said ?? []),
  };
}
