import type {
  Batch,
  PlanInput,
  PlannedTouch,
  PlanResult,
  Span,
  Wait,
} from '../../../../src/core/day/plan/types.ts';

/**
 * A second reading of the rules, in milliseconds, without a line of the planner's: everything that is
 * wrong with a plan, as sentences, and what it costs.
 */
export interface Checked {
  readonly wrong: readonly string[];
  readonly cost: number;
}

type Fits = Extract<PlanResult, { fits: true }>;
interface Held {
  readonly what: 'oven' | 'fridge' | 'bowls';
  readonly batch: string;
  readonly from: number;
  readonly to: number;
  readonly amount: number;
}

const MIN = 60_000;
const GRID = 5 * MIN;
const outward = ({ from, to }: Span): [number, number] =>
  from === to ? [from, from] : [Math.floor(from / GRID) * GRID, Math.ceil(to / GRID) * GRID];
const up = (at: number): number => Math.ceil(at / GRID) * GRID;
const overlap = (a: number, b: number, c: number, d: number): boolean =>
  a < b && c < d && a < d && c < b;
const points = (x: number, weight: number): number => weight * (0.25 * x + 0.75 * x * x);

function waitPoints(wait: Wait, minutes: number): number {
  if (minutes < wait.min || minutes > wait.max) return Infinity;
  if (minutes < wait.typicalFrom)
    return points((wait.typicalFrom - minutes) / (wait.typicalFrom - wait.min), wait.weightShort);
  if (minutes > wait.typicalTo)
    return points((minutes - wait.typicalTo) / (wait.max - wait.typicalTo), wait.weightLong);
  return 0;
}

class Check {
  readonly wrong: string[] = [];
  readonly held: Held[] = [];
  cost = 0;
  constructor(
    readonly input: PlanInput,
    readonly fits: Fits,
  ) {}

  say(is: boolean, text: string): void {
    if (!is) this.wrong.push(text);
  }

  touch(batch: Batch, name: string, hands: number): PlannedTouch {
    const found = this.fits.touches.filter((one) => one.batch === batch.name && one.name === name);
    this.say(found.length === 1, `${name}: planned ${found.length} times`);
    const touch = found[0]!;
    const fixed = batch.fixed?.[name];
    this.say(touch.hands === hands, `${name}: hands`);
    this.say(touch.frozen === (fixed !== undefined), `${name}: frozen`);
    if (fixed !== undefined) this.say(touch.at === fixed, `${name}: moved though fixed`);
    else {
      this.say(touch.at % GRID === 0, `${name}: off the grid`);
      this.say(touch.at >= this.input.planFrom, `${name}: before planning starts`);
    }
    const { earliest, latest, fineUntil, lastPossible, at } = touch;
    this.say(earliest <= at && at <= latest, `${name}: not between earliest and latest`);
    this.say(latest <= fineUntil && fineUntil <= lastPossible, `${name}: slack out of order`);
    const stay = batch.stayPut?.[name];
    if (stay) this.cost += (stay.costPer5Min * Math.abs(up(at) - stay.at)) / GRID;
    if (hands === 0) return touch;
    const end = up(at) + hands * MIN;
    for (const span of this.input.ratherNot)
      if (overlap(up(at), end, ...outward(span))) this.cost += span.cost;
    if (fixed !== undefined) return touch;
    for (const span of this.input.blocked)
      this.say(!overlap(at, end, ...outward(span)), `${name}: hands in ${span.name}`);
    if (this.input.now !== undefined) this.say(at >= this.input.now, `${name}: in the past`);
    return touch;
  }

  batch(batch: Batch): void {
    const mains = batch.steps.map((step) => this.touch(batch, step.name, step.hands));
    const ready = this.fits.ready.find((one) => one.batch === batch.name)!.at;
    batch.steps.forEach((step, i) => {
      const main = mains[i]!;
      const at = up(main.at);
      const end = at + step.hands * MIN;
      const next = i + 1 < mains.length ? up(mains[i + 1]!.at) : ready;
      const minutes = (next - end) / MIN;
      if ('choices' in step.wait) {
        const feed = step.wait.choices.find((one) => one.name === main.choice);
        this.say(feed !== undefined, `${step.name}: no feed is chosen`);
        this.cost += feed ? waitPoints(feed, minutes) + feed.extra : 0;
      } else this.cost += waitPoints(step.wait, minutes);
      this.say(this.cost < Infinity, `${step.name}: a wait of ${minutes} min`);
      this.inside(batch, step, end, next);
      const hold = (what: Held['what'], amount: number, to: number): void => {
        if (amount > 0) this.held.push({ what, batch: batch.name, from: at, to, amount });
      };
      hold('bowls', step.uses?.bowls ?? 0, next);
      hold('fridge', step.uses?.fridge ?? 0, next);
      const after = step.ovenAfter === undefined ? at : end + step.ovenAfter * MIN;
      if (step.uses?.oven || step.ovenAfter !== undefined)
        hold('oven', 1, Math.max(step.uses?.oven ? next : at, after));
    });
    if (batch.due !== null)
      this.say(ready === Math.floor(batch.due / GRID) * GRID, `${batch.name}: not ready when due`);
    if (batch.startAt === undefined) return;
    const start = up(batch.startAt);
    this.say(up(mains[0]!.at) === start, `${batch.name}: does not start when it shall`);
    if (batch.due !== null) return;
    const horizon = (batch.horizonMinutes ?? 7200) * MIN;
    this.say(ready <= start + horizon, `${batch.name}: beyond the horizon`);
    this.cost += ((batch.finishCostPerHour ?? 0.2) * (ready - start)) / (60 * MIN);
  }

  inside(batch: Batch, step: Batch['steps'][number], end: number, next: number): void {
    let before = end;
    const spans: [number, number][] = [];
    for (const side of step.during ?? []) {
      const at = up(this.touch(batch, side.name, side.hands).at);
      this.say(at >= before, `${side.name}: before the touch before it is over`);
      const off = (at - end) / MIN - side.at;
      this.say(off >= -side.earlier && off <= side.later, `${side.name}: ${off} min off its time`);
      if (off !== 0)
        this.cost += points(off < 0 ? -off / side.earlier : off / side.later, side.weight);
      before = at + side.hands * MIN;
      spans.push([at, before]);
    }
    this.say(before <= next, `${step.name}: a touch runs into the next step`);
    const on = step.beforeNext;
    if (!on) return;
    const at = up(this.touch(batch, on.name, on.hands).at);
    const over = at + on.hands * MIN;
    this.say(at >= end, `${on.name}: before the hands are free`);
    for (const [from, to] of spans)
      this.say(!overlap(at, over, from, to), `${on.name}: at the time of a side touch`);
    this.cost += waitPoints(on, (next - over) / MIN);
    this.say(this.cost < Infinity, `${on.name}: heats ${(next - over) / MIN} min`);
  }

  /** Oven, fridge and bowls at every instant that something begins to be held. */
  stores(): void {
    const { kitchen, ovenBusy = [] } = this.input;
    const has = { oven: 1, fridge: kitchen.fridgePlaces, bowls: kitchen.bowls };
    const busy = ovenBusy.map(outward);
    const instants = [...this.held.map(({ from }) => from), ...busy.map(([from]) => from)];
    for (const t of instants) {
      for (const what of ['oven', 'fridge', 'bowls'] as const) {
        const here = this.held.filter((one) => one.what === what && one.from <= t && t < one.to);
        const byBatch = new Map<string, number>();
        for (const { batch, amount } of here)
          byBatch.set(batch, what === 'oven' ? 1 : (byBatch.get(batch) ?? 0) + amount);
        const taken = what === 'oven' && busy.some(([from, to]) => from <= t && t < to) ? 1 : 0;
        const sum = [...byBatch.values()].reduce((all, one) => all + one, taken);
        this.say(
          sum <= has[what],
          `${what}: ${sum} of ${has[what]} at ${new Date(t).toISOString()}`,
        );
      }
    }
  }

  /** One pair of hands. */
  hands(): void {
    const all = this.fits.touches;
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1)) {
        if (a.frozen && b.frozen) continue;
        const [from, to] = [up(a.at), up(b.at)];
        const both = overlap(from, from + a.hands * MIN, to, to + b.hands * MIN);
        this.say(!both, `${a.batch} ${a.name} and ${b.batch} ${b.name} at once`);
      }
    });
  }
}

/** Holds a plan against every rule. */
export function checkPlan(input: PlanInput, fits: Fits): Checked {
  const check = new Check(input, fits);
  for (const batch of input.batches) check.batch(batch);
  check.stores();
  check.hands();
  const planned = input.batches.flatMap(({ steps }) =>
    steps.map((step) => 1 + (step.during?.length ?? 0) + (step.beforeNext ? 1 : 0)),
  );
  check.say(
    fits.touches.length === planned.reduce((sum, one) => sum + one, 0),
    'touches nobody asked for',
  );
  return { wrong: check.wrong, cost: check.cost };
}
