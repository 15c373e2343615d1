import { STORES, type Board, type Store } from './board.ts';
import type { Bounds } from './layers.ts';
import type { OnePlan } from './one-plan.ts';

/** Slots in which a plan uses something, half-open. */
export interface Use {
  readonly from: number;
  readonly to: number;
  readonly amount: number;
}

/** A plan's hands, the touches that cannot move apart from the others. */
export function handsOf({ slots, chain }: OnePlan): (Use & { readonly fixed: boolean })[] {
  return chain.touches.flatMap(({ hands, fixed }, touch) => {
    const from = slots[touch]!;
    return hands > 0 ? [{ from, to: from + hands, amount: 1, fixed: fixed !== null }] : [];
  });
}

/** What a plan holds of a store; the oven's stretches joined, for a bake never holds it twice. */
export function holdsOf({ steps, chain }: OnePlan, store: Store): Use[] {
  const uses: Use[] = [];
  chain.links.forEach((link, i) => {
    const from = steps[i]!;
    const next = steps[i + 1]!;
    if (store !== 'oven') {
      const amount = link[store];
      if (amount > 0 && next > from) uses.push({ from, to: next, amount });
      return;
    }
    const after = link.ovenPast === null ? from : from + link.hands + link.ovenPast;
    const to = Math.max(after, link.oven ? next : from);
    if (to === from || (!link.oven && link.ovenPast === null)) return;
    const last = uses.at(-1);
    if (last && from <= last.to) uses[uses.length - 1] = { ...last, to: Math.max(last.to, to) };
    else uses.push({ from, to, amount: 1 });
  });
  return uses;
}

/** What is left for one batch when these plans stand. */
export function reserve(board: Board, others: readonly OnePlan[]): Bounds {
  const forbid = new Uint8Array(board.size);
  const hands = others.flatMap(handsOf);
  for (const { from, to, fixed } of hands) if (fixed) forbid.fill(1, from, to);
  for (const { from, to, fixed } of hands) if (!fixed) forbid.fill(2, from, to);
  const room = Object.fromEntries(
    STORES.map((store) => {
      const left = board.room[store].slice();
      for (const plan of others)
        for (const { from, to, amount } of holdsOf(plan, store))
          for (let t = from; t < to; t += 1) left[t]! -= amount;
      return [store, left];
    }),
  ) as Record<Store, Int32Array>;
  return { forbid, room };
}

/** Something that plans use more of than there is, from slot to slot. */
export interface Clash {
  readonly what: Store | 'hands';
  readonly from: number;
  readonly to: number;
}

/** Runs of slots in which more is used than is there, hands last. */
export function clashesOf(board: Board, plans: readonly OnePlan[]): readonly Clash[] {
  const clashes: Clash[] = [];
  const scan = (what: Clash['what'], isOver: (slot: number) => boolean): void => {
    for (let t = 0; t < board.size; t += 1) {
      if (!isOver(t)) continue;
      const from = t;
      while (t < board.size && isOver(t)) t += 1;
      clashes.push({ what, from, to: t });
    }
  };
  for (const store of STORES) {
    const used = new Int32Array(board.size);
    for (const plan of plans)
      for (const { from, to, amount } of holdsOf(plan, store))
        for (let t = from; t < to; t += 1) used[t]! += amount;
    scan(store, (t) => used[t]! > 0 && used[t]! > board.room[store][t]!);
  }
  const free = new Int32Array(board.size);
  const held = new Uint8Array(board.size);
  for (const { from, to, fixed } of plans.flatMap(handsOf)) {
    for (let t = from; t < to; t += 1) {
      if (fixed) held[t] = 1;
      else free[t]! += 1;
    }
  }
  scan('hands', (t) => free[t]! + held[t]! > 1);
  return clashes;
}

/** How much of something a plan uses in a slot. */
export function useAt(plan: OnePlan, what: Clash['what'], slot: number): number {
  const uses: readonly Use[] = what === 'hands' ? handsOf(plan) : holdsOf(plan, what);
  return uses.reduce(
    (sum, { from, to, amount }) => (from <= slot && slot < to ? sum + amount : sum),
    0,
  );
}
