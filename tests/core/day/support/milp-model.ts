import type { Batch, PlanInput, Span } from '../../../../src/core/day/plan/types.ts';
import { makeLp, type Lp } from './lp.ts';

const GRID = 300_000;
export const up = (at: number): number => Math.ceil(at / GRID);
export const down = (at: number): number => Math.floor(at / GRID);

export interface Timed {
  readonly name: string;
  readonly at: string;
  readonly hands: number;
  readonly lo: number;
  readonly hi: number;
}
/** A stretch that starts with one variable and ends a length after each of some others. */
export interface Hold {
  readonly what: 'oven' | 'fridge' | 'bowls';
  readonly amount: number;
  readonly from: string;
  readonly ends: readonly (readonly [string, number])[];
}

/** Touches, holds and convex prices as rows and variables; slots are counted from the first one. */
export class MilpModel {
  readonly lp: Lp = makeLp();
  /** An instance no choice of slots can meet. */
  impossible = false;
  readonly origin: number;
  private readonly windows = new Map<string, readonly [number, number]>();
  constructor(readonly input: PlanInput) {
    this.origin = up(input.planFrom) - 1;
  }

  slots({ from, to }: Span): [number, number] {
    return [down(from) - this.origin, (from === to ? down(from) : up(to)) - this.origin];
  }

  /** A start or an end, between two slots. */
  variable(lo: number, hi: number): string {
    const name = this.lp.variable(lo, hi);
    this.windows.set(name, [lo, hi]);
    return name;
  }

  /** Either the first ends before the second begins, or the other way round; nothing if they cannot meet. */
  apart(a: Hold | Timed, b: Hold | Timed): void {
    const from = (one: Hold | Timed): string => ('from' in one ? one.from : one.at);
    const ends = (one: Hold | Timed) => ('from' in one ? one.ends : [[one.at, one.hands] as const]);
    /** How far, at most, the first runs past the second's beginning. */
    const past = (one: Hold | Timed, other: Hold | Timed): number =>
      Math.max(...ends(one).map(([end, by]) => this.windows.get(end)![1] + by)) -
      this.windows.get(from(other))![0];
    if (past(a, b) <= 0 || past(b, a) <= 0) return;
    const order = this.lp.variable(0, 1);
    const rows = (one: Hold | Timed, other: Hold | Timed, factor: number, most: number): void => {
      for (const [end, by] of ends(one)) {
        const terms = [
          [1, end],
          [-1, from(other)],
          [factor, order],
        ] as const;
        this.lp.row(terms, -Infinity, most - by);
      }
    };
    rows(a, b, -past(a, b), 0);
    rows(b, a, past(b, a), past(b, a));
  }

  /** A touch's start, kept to free runs and paying what each run costs. */
  touch(batch: Batch, name: string, minutes: number, lo: number, hi: number): Timed {
    const { lp, input, origin } = this;
    const hands = minutes / 5;
    const at = this.variable(lo, hi);
    const priceAt = (t: number): number => {
      if (hands === 0) return 0;
      const meets = (span: Span): boolean => {
        const [from, to] = this.slots(span);
        return from < to && t < to && from < t + hands;
      };
      if (input.blocked.some(meets)) return Infinity;
      if (input.now !== undefined && (origin + t) * GRID < input.now) return Infinity;
      return input.ratherNot.reduce((all, span) => all + (meets(span) ? span.cost : 0), 0);
    };
    const runs: { lo: number; hi: number; cost: number }[] = [];
    for (let t = lo; t <= hi; t += 1) {
      const cost = priceAt(t);
      const last = runs.at(-1);
      if (cost === Infinity) continue;
      if (last?.hi === t - 1 && last.cost === cost) last.hi = t;
      else runs.push({ lo: t, hi: t, cost });
    }
    if (runs.length === 0) this.impossible = true;
    const picks = runs.map((run) => [run, lp.variable(0, 1)] as const);
    for (const [{ cost }, pick] of picks) lp.price(cost, pick);
    lp.row(
      picks.map(([, pick]) => [1, pick]),
      1,
      1,
    );
    lp.row([[1, at], ...picks.map(([run, pick]) => [-run.lo, pick] as const)], 0, Infinity);
    lp.row([[1, at], ...picks.map(([run, pick]) => [-run.hi, pick] as const)], -Infinity, 0);
    const stay = batch.stayPut?.[name];
    if (stay) {
      const off = lp.variable(0, Infinity, 'real');
      const to = stay.at / GRID - origin;
      lp.row(
        [
          [1, off],
          [-1, at],
        ],
        -to,
        Infinity,
      );
      lp.row(
        [
          [1, off],
          [1, at],
        ],
        to,
        Infinity,
      );
      lp.price(stay.costPer5Min, off);
    }
    return { name, at, hands, lo, hi };
  }

  /** A convex price of a length, which is a sum of terms: above every segment, one a slot. */
  convex(
    length: readonly (readonly [number, string])[],
    costs: readonly number[],
    min: number,
    on?: string,
  ) {
    const { lp } = this;
    const price = lp.variable(0, Infinity, 'real');
    lp.price(1, price);
    for (let i = 0; i + 1 < costs.length; i += 1) {
      const slope = costs[i + 1]! - costs[i]!;
      if (slope === 0) continue;
      const base = costs[i]! - slope * (min + i);
      const terms = [
        [1, price] as const,
        ...length.map(([f, name]) => [-slope * f, name] as const),
      ];
      if (on === undefined) lp.row(terms, base, Infinity);
      else lp.row([...terms, [-base, on]], 0, Infinity);
    }
  }
}
