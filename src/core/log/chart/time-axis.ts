import { DAY, type Instant } from '../../units.ts';
import type { DrawnPart } from '../drawing.ts';
import type { LogClock } from '../when.ts';
import { timeTicks, type Scale } from './axis.ts';
import { GAP, textWidth, thin, type Letters } from './labels.ts';

/** From so long on a midnight is told by its date: a weekday may come twice. */
const WEEK = 6 * DAY;

/** What a tick says: a midnight its day, any other its hour; the first one both. */
const wordsAt = (
  at: Instant,
  isFirst: boolean,
  { clock, long }: { readonly clock: LogClock; readonly long: boolean },
): string => {
  const day = long ? clock.date(at) : clock.day(at);
  if (clock.midnight(at) === at) return day;
  return isFirst ? `${day} ${clock.hour(at)}` : clock.hour(at);
};

/**
 * A line of time with its ticks, and under it what they say: the days first, the hours as far as they have
 * room. `told`: whether there is a line for words at all.
 */
export function timeAxis(
  span: readonly [Instant, Instant],
  {
    clock,
    x,
    left,
    right,
    rim,
    at,
    told,
    ...letters
  }: Letters & {
    readonly clock: LogClock;
    readonly x: Scale;
    readonly left: number;
    readonly right: number;
    /** Of the drawing. */
    readonly rim: number;
    readonly at: number;
    readonly told: boolean;
  },
): DrawnPart[] {
  const long = span[1] - span[0] >= WEEK;
  const hour = textWidth(clock.hour(span[0]), letters) + 2 * GAP;
  const most = Math.max(1, Math.floor((right - left) / hour));
  const ticks = timeTicks(span, most, (instant) => clock.midnight(instant));
  const isDay = (tick: Instant): boolean => clock.midnight(tick) === tick;
  const order = ticks
    .map((tick, n) => ({ tick, n, text: wordsAt(tick, n === 0, { clock, long }) }))
    .toSorted((a, b) => Number(b.n === 0 || isDay(b.tick)) - Number(a.n === 0 || isDay(a.tick)));
  // The first tick stands near the rim: its words are pushed in rather than left out.
  const placed = order.map(({ tick, text }) => {
    const width = textWidth(text, letters);
    const middle = Math.min(Math.max(x(tick), width / 2), rim - width / 2);
    return { at: middle, width, text };
  });
  return [
    {
      kind: 'line',
      at: [
        [left, at],
        [right, at],
      ],
      weight: 'plain',
    },
    ...ticks.map((tick): DrawnPart => ({
      kind: 'line',
      at: [
        [x(tick), at],
        [x(tick), at + 1.2],
      ],
      weight: 'plain',
    })),
    ...(told ? thin(placed, [0, rim]) : []).map((n): DrawnPart => ({
      kind: 'text',
      at: [placed[n]!.at, at + 2 + letters.cap],
      text: placed[n]!.text,
      anchor: 'middle',
    })),
  ];
}
