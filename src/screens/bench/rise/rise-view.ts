import type { CourseAt, RiseCourse } from '../../../core/day/rise-course.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { rise as words } from '../../../core/speech/words/rise.ts';
import { fill } from '../../../core/speech/fill.ts';
import { HOUR, MINUTE, type Instant } from '../../../core/units.ts';
import { placeLabels, type Room, type Stands } from './place-labels.ts';

/** A place on the chart: 0–1 from its left and from its top. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** What was read, each in a shape of its own; `line`: no mark, the label of a line. */
export type MarkShape = 'bowl' | 'jar' | 'growth' | 'dent' | 'line';

export interface Mark extends Spot, Stands {
  readonly shape: MarkShape;
  readonly label: string;
}

/** One line of the table; null: nothing was read then. */
export interface Row {
  readonly time: string;
  readonly read: string | null;
  readonly likely: string;
  readonly span: string;
}

/** The chart as data: nothing of it is measured on a screen. */
export interface RiseView {
  readonly title: string;
  /** Upper edge of the band forth, lower edge back. */
  readonly band: readonly Spot[];
  readonly likely: readonly Spot[];
  readonly jar: readonly Spot[];
  /** Height of the goal. */
  readonly goal: number;
  readonly now: number;
  /** What was read, and the labels of goal, now and lines. */
  readonly marks: readonly Mark[];
  readonly across: readonly { readonly x: number; readonly label: string }[];
  readonly up: readonly { readonly y: number; readonly label: string }[];
  readonly rows: readonly Row[];
  /** Likely now, %. */
  readonly percent: number;
}

/** Top of the chart above the goal, as a share of it; what the model says beyond is cut. */
const HEADROOM = 1.35;
/** Hours between ticks: the first that leaves room for their labels. */
const STEPS = [0.5, 1, 2, 3, 4, 6, 12, 24] as const;
/** From here on an hour alone no longer says which day it is of. */
const LONG = 20 * HOUR;
/** Where nothing was measured yet: a wide tablet. */
const USUAL_ROOM: Room = { letter: 0.017, line: 0.09 };
/** Model values are told in steps of this, %: nobody knows them better. Judgement. */
const STEP = 5;

/** Beyond these the clock extrapolates: a rise over 110 %, a loaf past its best. Judgement. */
const KNOWN: Readonly<Record<RiseCourse['of'], number>> = { dough: 110, loaf: 135 };

const rounded = (percent: number): number => STEP * Math.round(percent / STEP);
const shownPercent = (percent: number): string => `${percent} %`;

/** The course between two of its points, on a straight line. */
export const courseAt = (band: readonly CourseAt[], at: Instant): CourseAt => {
  const after = band.findIndex((one) => one.at >= at);
  if (after < 0) return { ...band.at(-1)!, at };
  if (after === 0) return { ...band[0]!, at };
  const [a, b] = [band[after - 1]!, band[after]!];
  const share = (at - a.at) / Math.max(1, b.at - a.at);
  const between = (from: number, to: number): number => from + share * (to - from);
  return {
    at,
    low: between(a.low, b.low),
    likely: between(a.likely, b.likely),
    high: between(a.high, b.high),
  };
};

/** Shape, words and height of what was read; a look at a loaf has no height but the likely one. */
const markOf = (
  reading: Reading,
  likely: number,
): { shape: MarkShape; label: string; percent: number } | null => {
  if (reading.what === 'rise') {
    const percent = shownPercent(reading.percent);
    const text =
      reading.in === 'jar' ? words.jarMark : reading.atLeast ? words.atLeast : words.tubMark;
    const shape = reading.in === 'jar' ? 'jar' : 'bowl';
    return { shape, label: fill(text, { percent }), percent: reading.percent };
  }
  if (reading.what === 'growth')
    return { shape: 'growth', label: words.growth[reading.grown], percent: likely };
  if (reading.what === 'poke')
    return { shape: 'dent', label: words.dent[reading.dent], percent: likely };
  return null;
};

const ticksOf = (from: Instant, to: Instant, most: number): readonly Instant[] => {
  const hours = (to - from) / HOUR;
  const step = STEPS.find((one) => hours / one <= most) ?? STEPS.at(-1)!;
  const first = Math.ceil(from / (step * HOUR)) * step * HOUR;
  const count = Math.max(0, Math.floor((to - first) / (step * HOUR)) + 1);
  return Array.from({ length: count }, (_, i) => first + i * step * HOUR);
};

/** Looks at one instant are one mark: a cold loaf's growth and its dent are told together. */
const together = <
  T extends { readonly at: Instant; readonly shape: MarkShape; readonly label: string },
>(
  marks: readonly T[],
): readonly T[] => {
  const isLook = ({ shape }: T): boolean => shape === 'growth' || shape === 'dent';
  return marks.reduce<readonly T[]>((all, mark) => {
    const twin = all.find((one) => isLook(one) && isLook(mark) && one.at === mark.at);
    if (twin === undefined) return [...all, mark];
    const both = { ...twin, label: `${twin.label}, ${mark.label}` };
    return all.map((one) => (one === twin ? both : one));
  }, []);
};

/**
 * A course laid out as a chart and as the table of the same values. `hour` and `day` write an instant;
 * `room` is what a letter takes of the chart as it stands on the screen.
 */
export function riseView(
  { of, now, band, jar, seen, goal }: RiseCourse,
  hour: (at: Instant) => string,
  day: (at: Instant) => string,
  room: Room = USUAL_ROOM,
): RiseView {
  const [from, to] = [band[0]!.at, band.at(-1)!.at];
  const read = seen.map(({ reading }) => (reading.what === 'rise' ? reading.percent : 0));
  const top = Math.max(goal * HEADROOM, ...read.map((percent) => percent * 1.1));
  const x = (at: Instant): number => Math.min(1, Math.max(0, (at - from) / (to - from)));
  const y = (percent: number): number => 1 - Math.min(1, Math.max(0, percent / top));
  const when = (at: Instant): string => (to - from > LONG ? `${day(at)} ${hour(at)}` : hour(at));
  const marks = seen.flatMap(({ at, reading }) => {
    const mark = markOf(reading, courseAt(band, at).likely);
    return mark === null ? [] : [{ ...mark, at, x: x(at), y: y(mark.percent) }];
  });
  const letters = Math.max(...[from, to].map((at) => when(at).length)) + 2;
  const ticks = ticksOf(from, to, Math.max(1, 1 / (letters * room.letter)));
  const present = Math.min(to, Math.max(from, now));
  const known = KNOWN[of];
  const told = (percent: number): string =>
    percent > known
      ? fill(words.over, { percent: shownPercent(known) })
      : shownPercent(rounded(percent));
  // A minute is as fine as the table tells: what was read in it stands in its line.
  const minute = (at: Instant): Instant => Math.floor(at / MINUTE) * MINUTE;
  const rows = [...ticks, present, ...seen.map(({ at }) => at)]
    .map(minute)
    .toSorted((a, b) => a - b)
    .filter((at, i, all) => at !== all[i - 1])
    .map((at): Row => {
      const { low, likely, high } = courseAt(band, at);
      const labels = seen.flatMap((one) =>
        minute(one.at) === at ? (markOf(one.reading, likely)?.label ?? []) : [],
      );
      return {
        time: at === minute(present) ? `${when(at)} ${words.now}` : when(at),
        read: labels.length > 0 ? labels.join(', ') : null,
        likely: told(likely),
        span: low > known ? told(low) : fill(words.span, { least: rounded(low), most: told(high) }),
      };
    });
  const spots = (key: 'low' | 'likely' | 'high'): Spot[] =>
    band.map((one) => ({ x: x(one.at), y: y(one[key]) }));
  const [likely, inJar] = [
    spots('likely').filter((_, i) => band[i]!.likely <= top),
    jar.map((one) => ({ x: x(one.at), y: y(one.likely) })),
  ];
  /** The last place of a line that is well within the chart. */
  const endOf = (line: readonly Spot[]): Spot[] => {
    const end = line.findLast((spot) => spot.y > room.line && spot.x < 0.97) ?? line[0];
    return end === undefined ? [] : [end];
  };
  const named = (spot: Spot, label: string) => ({
    ...spot,
    label,
    shape: 'line' as const,
    blank: true as const,
  });
  const goalLabel = fill(words.goal[of], { percent: shownPercent(Math.round(goal)) });
  return {
    title: words.title[of],
    band: [...spots('high'), ...spots('low').reverse()],
    likely,
    jar: inJar,
    goal: y(goal),
    now: x(present),
    marks: placeLabels(
      [
        ...together(marks).map(({ shape, label, ...at }) => ({ x: at.x, y: at.y, shape, label })),
        named({ x: 0, y: y(goal) - room.line * 0.6 }, goalLabel),
        { ...named({ x: x(present), y: 1 - room.line * 0.6 }, words.now), upright: true as const },
        ...endOf(likely).map((spot) => named(spot, words.likely)),
        ...endOf(inJar).map((spot) => named(spot, words.inJar)),
      ],
      room,
    ),
    across: ticks.map((at) => ({ x: x(at), label: when(at) })),
    up: [0, 50, 100].map((percent) => ({ y: y(percent), label: shownPercent(percent) })),
    rows,
    percent: rounded(courseAt(band, present).likely),
  };
}
