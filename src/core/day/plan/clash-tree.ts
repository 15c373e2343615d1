import { STORES, type Board, type Store } from './board.ts';
import type { Bounds } from './layers.ts';
import { costOf } from './one-by-one.ts';
import { onePlan, type OnePlan } from './one-plan.ts';
import { SAME, type Effort } from './shortest.ts';
import { clashesOf, useAt, type Clash } from './uses.ts';

/** In a slot a batch may use no more than so much. */
interface Limit {
  readonly what: Clash['what'];
  readonly slot: number;
  readonly most: number;
}

interface Node {
  readonly limits: readonly (readonly Limit[])[];
  readonly plans: readonly OnePlan[];
  readonly cost: number;
  readonly clashes: readonly Clash[];
}

/** How the search stands: the best plan yet, and what no plan can be cheaper than. */
export interface Standing {
  readonly best: readonly OnePlan[] | null;
  readonly bound: number;
}

const over = (clashes: readonly Clash[]): number =>
  clashes.reduce((sum, { from, to }) => sum + to - from, 0);

function boundsOf(board: Board, limits: readonly Limit[]): Bounds {
  const hands = limits.filter(({ what }) => what === 'hands');
  const forbid = hands.length > 0 ? new Uint8Array(board.size) : null;
  for (const { slot } of hands) forbid![slot] = 2;
  const room: Record<Store, Int32Array> = { ...board.room };
  for (const store of STORES) {
    const its = limits.filter(({ what }) => what === store);
    if (its.length === 0) continue;
    room[store] = room[store].slice();
    for (const { slot, most } of its) room[store][slot] = Math.min(room[store][slot]!, most);
  }
  return { forbid, room };
}

/** Plans of single batches under limits, each made once. */
class Planner {
  private readonly known = new Map<string, OnePlan | null>();
  constructor(
    readonly board: Board,
    readonly effort: Effort,
  ) {}

  plan(index: number, limits: readonly Limit[]): OnePlan | null {
    const key = `${index}|${limits
      .map(({ what, slot, most }) => `${what}${slot}:${most}`)
      .sort()
      .join()}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const plan = onePlan(this.board, index, boundsOf(this.board, limits), this.effort);
    this.known.set(key, plan);
    return plan;
  }

  /** The node with one batch kept to one limit more; null where it has no plan left. */
  child(node: Node, index: number, limit: Limit): Node | null {
    const own = [...node.limits[index]!, limit];
    const plan = this.plan(index, own);
    if (plan === null) return null;
    const limits = node.limits.map((one, i) => (i === index ? own : one));
    const plans = node.plans.map((one, i) => (i === index ? plan : one));
    return { limits, plans, cost: costOf(plans), clashes: clashesOf(this.board, plans) };
  }

  /** In any plan of all, one of those that use what is short there uses less: the ways to go on. */
  split(node: Node, { what }: Clash, slot: number): Node[] {
    return node.plans.flatMap((plan, index) => {
      const use = useAt(plan, what, slot);
      const child = use > 0 ? this.child(node, index, { what, slot, most: use - 1 }) : null;
      return child ? [child] : [];
    });
  }
}

/** The node in which a batch of equal cost clashes less, or the ways to split it where it hurts most. */
function open(
  planner: Planner,
  node: Node,
): { readonly instead: Node } | { readonly split: Node[] } {
  const stores = node.clashes.filter(({ what }) => what !== 'hands');
  const clashes = stores.length > 0 ? stores : node.clashes;
  let dearest = -1;
  let chosen: Node[] = [];
  for (const clash of clashes) {
    const { from, to } = clash;
    for (const slot of new Set([from, Math.floor((from + to - 1) / 2), to - 1])) {
      const ways = planner.split(node, clash, slot);
      const instead = ways.find(
        (way) => way.cost <= node.cost + SAME && over(way.clashes) < over(node.clashes),
      );
      if (instead) return { instead: { ...instead, limits: node.limits } };
      const cheapest = Math.min(...ways.map(({ cost }) => cost));
      if (cheapest === Infinity) return { split: [] };
      if (cheapest > dearest) [dearest, chosen] = [cheapest, ways];
    }
  }
  return { split: chosen };
}

/**
 * Several batches exactly: each planned alone, a clash split by who uses less there, cheapest first;
 * straight down while no plan is known. Yields after each step; ends when the best is proven, or that
 * there is none (`best` null, `bound` Infinity). Source: conflict-based search (Sharon, Stern, Felner,
 * Sturtevant 2015, AIJ 219:40–66) with the single batch's exact plan as its low level.
 */
export function* clashTree(
  board: Board,
  known: readonly OnePlan[] | null,
  effort: Effort,
): Generator<Standing, void> {
  const planner = new Planner(board, effort);
  let best = known;
  const alone = board.chains.map((_, index) => planner.plan(index, []));
  if (alone.some((plan) => plan === null)) {
    yield { best: null, bound: Infinity };
    return;
  }
  const plans = alone as OnePlan[];
  const root = { limits: plans.map(() => []), plans, cost: costOf(plans) };
  const nodes: Node[] = [{ ...root, clashes: clashesOf(board, plans) }];
  while (nodes.length > 0) {
    const most: number = best ? costOf(best) - SAME : Infinity;
    const bound = nodes.reduce((least, { cost }) => Math.min(least, cost), Infinity);
    if (bound >= most) break;
    yield { best, bound };
    const at = best ? nodes.findIndex(({ cost }) => cost === bound) : nodes.length - 1;
    const node = nodes.splice(at, 1)[0]!;
    if (node.clashes.length === 0) {
      best = node.plans;
      continue;
    }
    const next = open(planner, node);
    if ('instead' in next) nodes.push(next.instead);
    else {
      const ways = next.split.filter(({ cost }) => cost < most);
      ways.sort((a, b) => b.cost - a.cost || over(b.clashes) - over(a.clashes));
      nodes.push(...ways);
    }
  }
  yield { best, bound: best ? costOf(best) : Infinity };
}
