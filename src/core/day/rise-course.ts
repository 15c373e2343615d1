import { doughClock } from '../clock/dough-clock.ts';
import { PROOF_WINDOW } from '../clock/proof-index.ts';
import { rise } from '../clock/rise.ts';
import { TAU, temperatureAt, type Path } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { quantile } from '../readiness/posterior.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, type Hours, type Instant } from '../units.ts';
import { bulkDough } from './bulk-dough.ts';
import { proofCourse } from './proof-course.ts';
import { proofDough } from './proof-dough.ts';
import type { WaitInput } from './waits.ts';

/** What is believed at an instant, %: four of five doughs lie between `low` and `high`. */
export interface CourseAt {
  readonly at: Instant;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A bake's rise against time: what is believed of it, what was seen, and where it is to go. */
export interface RiseCourse {
  /** `dough`: its rise in the bowl, %; `loaf`: its proof index, % of ready. */
  readonly of: 'dough' | 'loaf';
  readonly now: Instant;
  readonly band: readonly CourseAt[];
  /** What a sample in a jar is likely at, along the band; empty where none was read. */
  readonly jar: readonly { readonly at: Instant; readonly likely: number }[];
  /** Readings that belong to it, in order. */
  readonly seen: readonly Seen[];
  readonly goal: number;
}

/** Points of a course; hours no chart goes beyond. Judgement. */
const POINTS = 60;
const MOST: Readonly<Record<RiseCourse['of'], Hours>> = { dough: 30, loaf: 48 };
/** Least hours a chart shows. Judgement. */
const LEAST: Hours = 2;

const isRise = ({ reading }: Seen): boolean => reading.what === 'rise' && reading.of === 'dough';
const isJar = ({ reading }: Seen): boolean => reading.what === 'rise' && reading.in === 'jar';
const isLoaf = ({ reading }: Seen): boolean =>
  reading.what === 'growth' || (reading.what === 'poke' && reading.dent !== 'unsure');

const later = (seen: readonly Seen[], begin: Instant): readonly Seen[] =>
  seen.filter(({ at }) => at >= begin).toSorted((a, b) => a.at - b.at);

/** Hours from `begin` that a chart shows: until a slow dough is there, and never less than up to now. */
const lengthOf = (
  of: RiseCourse['of'],
  begin: Instant,
  now: Instant,
  isThere: (hours: Hours) => boolean,
): Hours => {
  let hours = Math.max(LEAST, ((now - begin) / HOUR) * 1.1);
  while (hours < MOST[of] && !isThere(hours)) hours += 0.25;
  return hours;
};

const bulkCourse = (input: WaitInput, now: Instant): RiseCourse => {
  const { p, rise: goal } = doughClock(input.recipe.formula);
  const { begin, path, jar, posterior } = bulkDough(input, TAU.bowl);
  const vigours = [0.1, 0.5, 0.9].map((a) => Math.exp(quantile(posterior, a)));
  const at = (way: Path, sum: Hours, vigour: number, hours: Hours): number =>
    100 * rise(vigour * sum, p, temperatureAt(way, hours));
  const most = lengthOf(
    'dough',
    begin,
    now,
    (hours) => at(path, theta(path, 0, hours), vigours[0]!, hours) >= 100 * goal,
  );
  const hours = Array.from({ length: POINTS + 1 }, (_, i) => (most * i) / POINTS);
  const seen = later(input.seen.filter(isRise), begin);
  const instant = (h: Hours): Instant => Math.round(begin + h * HOUR);
  return {
    of: 'dough',
    now,
    band: hours.map((h) => {
      const sum = theta(path, 0, h);
      const [low, likely, high] = vigours.map((vigour) => at(path, sum, vigour, h));
      return { at: instant(h), low: low!, likely: likely!, high: high! };
    }),
    jar: seen.some(isJar)
      ? hours.map((h) => ({ at: instant(h), likely: at(jar, theta(jar, 0, h), vigours[1]!, h) }))
      : [],
    seen,
    goal: 100 * goal,
  };
};

const loafCourse = (input: WaitInput, now: Instant): RiseCourse => {
  const chilled = input.stage === 'proof.retard' ? (input.chilled ?? input.now) : input.chilled;
  const dough = proofDough(chilled === undefined ? input : { ...input, chilled });
  const { begin } = dough;
  const { full, most } = PROOF_WINDOW;
  const until = proofCourse(dough, 0, MOST.loaf, 0.25);
  const end = lengthOf('loaf', begin, now, (hours) => {
    const there = until.find((one) => one.hours >= hours) ?? until.at(-1)!;
    return there.low >= full || there.likely >= most;
  });
  return {
    of: 'loaf',
    now,
    band: proofCourse(dough, 0, end, end / POINTS).map(({ hours, low, likely, high }) => ({
      at: Math.round(begin + hours * HOUR),
      low: 100 * low,
      likely: 100 * likely,
      high: 100 * high,
    })),
    jar: [],
    seen: later(input.seen.filter(isLoaf), begin),
    goal: 100 * full,
  };
};

/**
 * The rise of a bake that stands in bulk or proof, from where it began to where a slow one is there;
 * null in any other part, and for a spooned loaf, whose index nobody fitted. `now` is no earlier than
 * the beginning.
 */
export function riseCourse(input: WaitInput, now: Instant): RiseCourse | null {
  const part = input.stage.split('.')[0];
  if (part === 'bulk') return bulkCourse(input, now);
  const fitted = part === 'proof' && input.recipe.process.shaping !== 'scoop';
  return fitted ? loafCourse(input, now) : null;
}
