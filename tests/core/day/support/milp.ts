import type { Batch, PlanInput, SideTouch, Wait } from '../../../../src/core/day/plan/types.ts';
import { down, MilpModel, up, type Hold, type Timed } from './milp-model.ts';

/**
 * The same question as a mixed-integer linear model, without a line of the planner's: whole start
 * slots, one binary for each maximal run of start slots that are free and equally priced, convex costs
 * by one segment a slot, a binary for each feed, one for each pair of touches or holds that could
 * meet. Holds in pairs are exact for two batches, not for three.
 */

const share = (x: number): number => 0.25 * x + 0.75 * x ** 2;
const waitCosts = (wait: Wait): number[] => {
  const costs: number[] = [];
  for (let d = wait.min; d <= wait.max; d += 5) {
    const short = d < wait.typicalFrom ? (wait.typicalFrom - d) / (wait.typicalFrom - wait.min) : 0;
    const long = d > wait.typicalTo ? (d - wait.typicalTo) / (wait.max - wait.typicalTo) : 0;
    costs.push(wait.weightShort * share(short) + wait.weightLong * share(long));
  }
  return costs;
};

/** The side touches of one wait and the one before the next step. */
function inside(
  model: MilpModel,
  batch: Batch,
  i: number,
  [lo, hi]: [number, number],
  at: string,
  next: string,
): Timed[] {
  const { lp } = model;
  const step = batch.steps[i]!;
  const hands = step.hands / 5;
  let before: readonly [string, number] = [at, hands];
  const made = (step.during ?? []).map((side: SideTouch): Timed => {
    const [early, late] = [
      hands + (side.at - side.earlier) / 5,
      hands + (side.at + side.later) / 5,
    ];
    const one = model.touch(batch, side.name, side.hands, lo + early, hi + late);
    lp.row(
      [
        [1, one.at],
        [-1, at],
      ],
      early,
      late,
    );
    lp.row(
      [
        [1, one.at],
        [-1, before[0]],
      ],
      before[1],
      Infinity,
    );
    before = [one.at, one.hands];
    const off: number[] = [];
    for (let by = -side.earlier; by <= side.later; by += 5)
      off.push(by === 0 ? 0 : side.weight * share(by < 0 ? -by / side.earlier : by / side.later));
    model.convex(
      [
        [1, one.at],
        [-1, at],
      ],
      off,
      early,
    );
    return one;
  });
  lp.row(
    [
      [1, next],
      [-1, before[0]],
    ],
    before[1],
    Infinity,
  );
  const on = step.beforeNext;
  if (!on) return made;
  const own = model.touch(batch, on.name, on.hands, lo + hands, hi + hands + longest(step) / 5);
  lp.row(
    [
      [1, own.at],
      [-1, at],
    ],
    hands,
    Infinity,
  );
  const length = [
    [1, next],
    [-1, own.at],
  ] as const;
  lp.row(length, (on.min + on.hands) / 5, (on.max + on.hands) / 5);
  model.convex(length, waitCosts(on), (on.min + on.hands) / 5);
  if (own.hands > 0) for (const side of made) if (side.hands > 0) model.apart(own, side);
  return [...made, own];
}

function waits(model: MilpModel, step: Batch['steps'][number], at: string, next: string): void {
  const { lp } = model;
  const hands = step.hands / 5;
  const length = [
    [1, next],
    [-1, at],
  ] as const;
  if (!('choices' in step.wait)) {
    lp.row(length, hands + step.wait.min / 5, hands + step.wait.max / 5);
    model.convex(length, waitCosts(step.wait), hands + step.wait.min / 5);
    return;
  }
  const feeds = step.wait.choices.map((feed) => {
    const on = lp.variable(0, 1);
    const d = lp.variable(0, feed.max / 5, 'real');
    lp.row(
      [
        [1, d],
        [-feed.min / 5, on],
      ],
      0,
      Infinity,
    );
    lp.row(
      [
        [1, d],
        [-feed.max / 5, on],
      ],
      -Infinity,
      0,
    );
    lp.price(feed.extra, on);
    model.convex([[1, d]], waitCosts(feed), feed.min / 5, on);
    return { on, d };
  });
  lp.row(
    feeds.map(({ on }) => [1, on]),
    1,
    1,
  );
  lp.row([...length, ...feeds.map(({ d }) => [-1, d] as const)], hands, hands);
}

const longest = (step: Batch['steps'][number]): number =>
  'choices' in step.wait ? Math.max(...step.wait.choices.map(({ max }) => max)) : step.wait.max;

const shortest = (step: Batch['steps'][number]): number =>
  'choices' in step.wait ? Math.min(...step.wait.choices.map(({ min }) => min)) : step.wait.min;

function batchInto(model: MilpModel, batch: Batch): { touches: Timed[]; holds: Hold[] } {
  const { lp, origin } = model;
  const start = batch.startAt === undefined ? null : up(batch.startAt) - origin;
  const last =
    batch.due === null ? start! + (batch.horizonMinutes ?? 7200) / 5 : down(batch.due) - origin;
  const sum = (steps: readonly Batch['steps'][number][], of: typeof longest): number =>
    steps.reduce((all, step) => all + step.hands / 5 + of(step) / 5, 0);
  const touches: Timed[] = [];
  const mains = batch.steps.map((step, i) => {
    const [before, after] = [batch.steps.slice(0, i), batch.steps.slice(i)];
    const lo = Math.max(
      start === null ? 1 : start + sum(before, shortest),
      batch.due === null ? 1 : last - sum(after, longest),
    );
    const hi = Math.min(
      last - sum(after, shortest),
      start === null ? Infinity : start + sum(before, longest),
    );
    if (lo > hi) model.impossible = true;
    const one = model.touch(batch, step.name, step.hands, lo, Math.max(lo, hi));
    touches.push(one);
    return one;
  });
  const ready = model.variable(batch.due === null ? 1 : last, last);
  if (start !== null) lp.row([[1, mains[0]!.at]], start, start);
  if (batch.due === null) {
    const points = (batch.finishCostPerHour ?? 0.2) / 12;
    lp.price(points, ready);
    lp.constant(-points * start!);
  }
  const holds: Hold[] = [];
  batch.steps.forEach((step, i) => {
    const { at, hands, lo, hi } = mains[i]!;
    const next = mains[i + 1]?.at ?? ready;
    waits(model, step, at, next);
    touches.push(...inside(model, batch, i, [lo, hi], at, next));
    const { bowls = 0, fridge = 0, oven } = step.uses ?? {};
    if (bowls > 0) holds.push({ what: 'bowls', amount: bowls, from: at, ends: [[next, 0]] });
    if (fridge > 0) holds.push({ what: 'fridge', amount: fridge, from: at, ends: [[next, 0]] });
    const after = step.ovenAfter === undefined ? [] : [[at, hands + step.ovenAfter / 5] as const];
    const ends = [...(oven ? [[next, 0] as const] : []), ...after];
    if (ends.length > 0) holds.push({ what: 'oven', amount: 1, from: at, ends });
  });
  return { touches, holds };
}

/** The model as text, and the cost that is in none of its variables; null where no touch has a slot. */
export function milpOf(input: PlanInput): { text: string; constant: number } | null {
  const model = new MilpModel(input);
  const made = input.batches.map((batch) => batchInto(model, batch));
  const has = { oven: 1, fridge: input.kitchen.fridgePlaces, bowls: input.kitchen.bowls };
  for (const { holds } of made) {
    for (const hold of holds) {
      if (hold.amount > has[hold.what]) return null;
      if (hold.what !== 'oven') continue;
      for (const busy of input.ovenBusy ?? []) {
        const [from, to] = model.slots(busy);
        if (from >= to) continue;
        const at = model.variable(from, from);
        model.apart(hold, { what: 'oven', amount: 1, from: at, ends: [[at, to - from]] });
      }
    }
  }
  const [a, b] = made;
  if (a && b) {
    for (const one of a.touches)
      for (const other of b.touches) if (one.hands > 0 && other.hands > 0) model.apart(one, other);
    for (const one of a.holds)
      for (const other of b.holds)
        if (one.what === other.what && one.amount + other.amount > has[one.what])
          model.apart(one, other);
  }
  if (model.impossible) return null;
  return { text: model.lp.text(), constant: model.lp.fixedCost };
}
