import { MINUTE, type Instant, type Minutes } from '../../units.ts';

/** Price of a look, in minutes of overshoot, and overshoot that does no harm. Judgement. */
const LOOK_COST: Minutes = 10;
const GRACE: Minutes = 10;
/** Grid of the looks and their least distance. Judgement. */
const STEP: Minutes = 5;
const APART: Minutes = 10;
/** How far past p90 looks are sought, in its distance from the middle, and when nothing is left. */
const TAIL = 5;
const SURE = 1e-9;
/** Minutes that a dough nobody can look at any more is taken to stand over. Judgement. */
const NEVER: Minutes = 1000;
/** Looks that are told: each new reading reckons them anew. Judgement. */
const MOST = 4;
const ENOUGH = 0.98;
/** The 90 % point of a normal distribution, in its sd. */
const Z90 = 1.2815515655446004;

/** When it may be ready: 10, 50 and 90 %. */
export interface ReadyTimes {
  readonly p10: Instant;
  readonly p50: Instant;
  readonly p90: Instant;
}

export interface Look {
  readonly at: Instant;
  /** That it is ready by then. */
  readonly chanceReady: number;
}

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Normal distribution function, by its series (Abramowitz & Stegun 26.2.11, from memory). */
function phi(z: number): number {
  const x = Math.abs(z);
  if (x > 8) return z > 0 ? 1 : 0;
  let sum = x;
  let term = x;
  for (let n = 1; term > 1e-17; n += 1) {
    term *= (x * x) / (2 * n + 1);
    sum += term;
  }
  const half = sum * density(x);
  return z > 0 ? 0.5 + half : 0.5 - half;
}

/** Sd of the half normal an instant lies in, ms. */
const sdAt = ({ p10, p50, p90 }: ReadyTimes, at: Instant): number =>
  (at < p50 ? p50 - p10 : p90 - p50) / Z90;

/** Chance that it is ready by an instant: half a normal either side of the middle. */
export function chanceReady(times: ReadyTimes, at: Instant): number {
  const sd = sdAt(times, at);
  if (sd <= 0) return at < times.p50 ? 0 : 1;
  return phi((at - times.p50) / sd);
}

/** ∫ of the chance from the middle to an instant, ms. */
function chanceArea(times: ReadyTimes, at: Instant): number {
  const sd = sdAt(times, at);
  if (sd <= 0) return Math.max(0, at - times.p50);
  const z = (at - times.p50) / sd;
  return sd * (z * phi(z) + density(z) - density(0));
}

/** Minutes of overshoot beyond the harmless that a look brings on after one at `from`: ∫ (at − r − g)⁺ dF. */
function overshoot(times: ReadyTimes, from: Instant, at: Instant, grace: Minutes): Minutes {
  const to = at - grace * MINUTE;
  if (to <= from) return 0;
  const area = chanceArea(times, to) - chanceArea(times, from);
  return (area - (to - from) * chanceReady(times, from)) / MINUTE;
}

/** What going at these times comes to: looks and minutes of overshoot, as one expects them. */
export function lookingCosts(
  times: ReadyTimes,
  looks: readonly Instant[],
  { now, grace = GRACE }: { readonly now: Instant; readonly grace?: Minutes },
): { readonly looks: number; readonly overshoot: Minutes } {
  let [count, over, before] = [0, 0, now];
  for (const at of looks) {
    count += 1 - chanceReady(times, before);
    over += overshoot(times, before, at, grace);
    before = at;
  }
  return { looks: count, overshoot: over };
}

/**
 * When to go and look, so that looks and overshoot together cost least. A look costs `lookCost` minutes
 * of overshoot, overshoot beyond `grace` a minute each. Looks are five-minute marks, ten minutes apart,
 * where `free`. Cost of standing at t: W(t) = min over u of S(t)·c + ∫(u − r − g)⁺ dF(r) over (t, u] +
 * W(u). Source: Barlow, Hunter, Proschan 1963 (J. SIAM 11:1078–1095), made discrete; that the ready time
 * is two half normals is judgement. The first four, or up to the one by which it is ready at 98 %.
 *
 * @throws Error where the three times are not in order
 */
export function lookTimes(
  times: ReadyTimes,
  {
    now,
    free,
    lookCost = LOOK_COST,
    grace = GRACE,
  }: {
    readonly now: Instant;
    free(at: Instant): boolean;
    readonly lookCost?: Minutes;
    readonly grace?: Minutes;
  },
): Look[] {
  const { p10, p50, p90 } = times;
  if (!(p10 <= p50 && p50 <= p90)) throw new Error('p10, p50 and p90 must be in order.');
  const step = STEP * MINUTE;
  const begin = Math.ceil(now / step) * step;
  const end = Math.max(begin, p90) + TAIL * (p90 - p50) + APART * MINUTE;
  const marks: Instant[] = [now];
  for (let at = begin; at <= end; at += step) if (at > now) marks.push(at);
  const chance = marks.map((at) => chanceReady(times, at));
  const rest = new Float64Array(marks.length);
  const next = new Int32Array(marks.length).fill(-1);
  for (let i = marks.length - 1; i >= 0; i -= 1) {
    const left = 1 - chance[i]!;
    if (left < SURE) continue;
    let best = Infinity;
    for (let j = i + 1; j < marks.length; j += 1) {
      const at = marks[j]!;
      if (at < marks[i]! + APART * MINUTE || !free(at)) continue;
      const cost = left * lookCost + overshoot(times, marks[i]!, at, grace) + rest[j]!;
      if (cost < best) [best, next[i]] = [cost, j];
    }
    // Nothing is free any more: what is not ready by then stands for good.
    rest[i] = best === Infinity ? left * NEVER : best;
  }
  const looks: Look[] = [];
  for (let i = next[0]!; i > 0 && looks.length < MOST; i = next[i]!) {
    looks.push({ at: marks[i]!, chanceReady: chance[i]! });
    if (chance[i]! >= ENOUGH) break;
  }
  return looks;
}
