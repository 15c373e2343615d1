import { tooEarly } from '../circle/would-take.ts';
import type { Room } from '../circle/cap.ts';
import { dayAfter, type DayKey } from '../circle/day-key.ts';
import type { RoomAnswer } from '../circle/day-room.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import { boundWords, roomWords } from './words/circle-oven.ts';
import { shown } from './facts.ts';
import { fill } from './fill.ts';
import { showDay } from './show-day.ts';
import { showMinute, type Clock } from './show-time.ts';

const DAY_MINUTES = 1440;

/** A minute after a day's midnight, with its day where that is another: '00:30 on Sun 4 May'. */
export function tellMinute(day: DayKey, minute: MinuteOfDay, clock: Clock): string {
  const later = Math.floor(minute / DAY_MINUTES);
  const time = showMinute(minute - later * DAY_MINUTES, clock);
  if (later === 0) return time;
  return fill(roomWords.onDay, { time, date: showDay(dayAfter(day, later)) });
}

/** How much room there is for a bread, before it is passed: 'Lane wheat: room for 5 loaves more.' */
export function tellBreadRoom(name: string, { more, binds }: Room): string {
  if (more === null) return fill(roomWords.noLimit, { name });
  if (more > 0) return fill(roomWords.more, { name, ...shown({ loaves: more }) });
  return [fill(roomWords.none, { name }), ...binds.map((bound) => boundWords[bound])].join(' ');
}

/** Of a day that takes none of some breads: why, each reason once. */
export function tellFull(rooms: readonly Room[]): string {
  const binds = [...new Set(rooms.flatMap((room) => room.binds))];
  return [roomWords.full, ...binds.map((bound) => boundWords[bound])].join(' ');
}

/**
 * Why a day does not take an order: what binds, of each bread how many still go, the hour that would do
 * where the oven going on is all it takes, and the next day with room. Null where it is taken.
 */
export function tellRefusal(
  answer: RoomAnswer,
  day: DayKey,
  nameOf: (bread: string) => string,
  clock: Clock,
): readonly string[] | null {
  const { takes, binds, lines, ifOvenGoesOn, lastOut, coolAt, next } = answer;
  if (takes) return null;
  const go = lines.filter((one) => one.go > 0);
  const until = (minute: MinuteOfDay): string => tellMinute(day, minute, clock);
  return [
    ...binds.map((bound) => boundWords[bound]),
    ...go.map(({ line, go: loaves }) =>
      fill(roomWords.still, { name: nameOf(line.bread), ...shown({ loaves }) }),
    ),
    ...(go.length === 0 ? [roomWords.goesNone] : []),
    ...(ifOvenGoesOn && lastOut !== null && coolAt !== null
      ? [fill(roomWords.goesOn, { until: until(lastOut), time: until(coolAt) })]
      : []),
    next === null ? roomWords.nextNone : fill(roomWords.next, { date: showDay(next) }),
  ];
}

/** Told where bread is to be fetched before it is cool; null where it is cool by then, or nobody said when. */
export function tellEarly(
  answer: Pick<RoomAnswer, 'warmUntil' | 'coolAt'>,
  at: MinuteOfDay | null,
  day: DayKey,
  clock: Clock,
): string | null {
  const early = tooEarly(at, answer);
  if (early === null || at === null || answer.coolAt === null) return null;
  const words = fill(roomWords[early], {
    time: showMinute(at, clock),
    until: tellMinute(day, answer.coolAt, clock),
  });
  return early === 'warm' ? `${words} ${roomWords.openBag}` : words;
}
