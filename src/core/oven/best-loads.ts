import { MINUTE, type Instant } from '../units.ts';
import { firstLoading, type Calls } from './hands.ts';
import { lastOut, layByList, turnIn, type Laid, type Oven, type Placeable } from './laid.ts';
import { byRoom } from './load-order.ts';

/** So many sequences of pots are all tried; more would keep a tablet busy. Judgement. */
const SEQUENCES = 1000;

/**
 * No plan can be out sooner: the same pots, hands that are never in their own way, all bakes as short
 * as the shortest; but nothing is loaded while they are away, and each loaf not before its own time.
 */
function soonest(list: readonly Placeable[], { free, recovery, away }: Oven): Instant {
  const bake = Math.min(...list.map(({ asks }) => asks.out)) * MINUTE;
  const load = list[0]?.asks.load ?? 0;
  const frees = [...free];
  let last = Math.max(...list.map(({ from, asks }) => from + asks.out * MINUTE));
  for (let i = 0; i < list.length; i += 1) {
    const first = Math.min(...frees);
    const at = firstLoading(first, { load, lid: 0, out: 0 }, [], away);
    last = Math.max(last, at + bake);
    frees[frees.indexOf(first)] = at + bake + recovery;
  }
  return last;
}

/** Choices of pots to leave cold; of pots as large that are free as soon and take the same loaves, one each. */
function choices(
  list: readonly Placeable[],
  { free, room }: Oven,
): readonly (readonly Instant[])[] {
  const taken = free.map((_, pot) => list.map(({ pots }) => Number(pots.includes(pot))).join(''));
  const known = new Map<string, readonly Instant[]>();
  for (let without = 0; without < 2 ** free.length; without += 1) {
    const some = free.map((at, i) => (without & (2 ** i) ? Infinity : at));
    if (!list.every(({ pots }) => pots.some((pot) => some[pot] !== Infinity))) continue;
    const key = some
      .map((at, i) => `${at} ${room[i]} ${taken[i]}`)
      .toSorted()
      .join();
    if (!known.has(key)) known.set(key, some);
  }
  return [...known.values()];
}

/**
 * Every sequence of pots, each next loaf of the list laid at its earliest beside those laid before:
 * a pot laid first may come later, and another gives way to its lid. Only what is out before `before`.
 */
function layBySequence(
  list: readonly Placeable[],
  oven: Oven,
  before: Instant,
): readonly Laid[] | null {
  let found: readonly Laid[] | null = null;
  let limit = before;
  const go = (
    laid: readonly Laid[],
    left: readonly Placeable[],
    free: readonly Instant[],
  ): void => {
    if (left.length === 0) {
      found = laid;
      limit = lastOut(laid);
      return;
    }
    if (soonest(left, { ...oven, free }) >= limit) return;
    const busy: readonly Calls[] = [...oven.standing, ...laid];
    for (const [pot, at] of free.entries()) {
      const one = at === Infinity ? undefined : left.find(({ pots }) => pots.includes(pot));
      if (one === undefined) continue;
      const turn = turnIn(pot, one, at, busy, oven);
      if (turn.outAt >= limit) continue;
      const rest = left.filter((other) => other !== one);
      go([...laid, turn], rest, free.with(pot, turn.outAt + oven.recovery));
    }
  };
  go([], list, oven.free);
  return found;
}

/** Turns that loaves could swap without any instant moving are given out in the order of the list. */
function inOrder(laid: readonly Laid[], list: readonly Placeable[]): readonly Laid[] {
  const kind = ({ pots, from, asks }: Placeable): string =>
    `${pots.join()} ${from} ${asks.lid} ${asks.out}`;
  const left = [...list];
  return laid
    .toSorted((a, b) => a.loadAt - b.loadAt)
    .map((turn) => {
      const first = left.findIndex((one) => kind(one) === kind(turn.one));
      return { ...turn, one: left.splice(first, 1)[0]! };
    });
}

/** In what order loaves are laid into a choice of pots: by their proof, and by how many of these take them. */
function ordersFor(
  list: readonly Placeable[],
  free: readonly Instant[],
): readonly (readonly Placeable[])[] {
  const room = ({ pots }: Placeable): number => pots.filter((pot) => free[pot] !== Infinity).length;
  const proofed = list.map((one) => ({ one, ...one.loaf, pots: room(one) }));
  const some = byRoom(proofed, ({ pots }) => pots);
  return [list, some.map(({ one }) => one)];
}

/**
 * The loads of which the last is out first, over every choice of pots and both orders of the loaves:
 * hands that are bound elsewhere can make one pot more a hindrance, and a pot may be left cold. The
 * loaves in their own order by list scheduling are kept where nothing beats them. With few loaves and pots
 * every sequence of pots is tried: for six equal loaves in three pots, loadings of up to three minutes, no
 * plan by the minute was sooner (tests). Every loaf fits a pot that is free some time.
 */
export function bestLoads(list: readonly Placeable[], oven: Oven): readonly Laid[] {
  if (list.length === 0) return [];
  let found = layByList(list, oven);
  let order = list;
  for (const free of choices(list, oven)) {
    const some = { ...oven, free };
    const count = free.filter((at) => at !== Infinity).length;
    for (const one of ordersFor(list, free)) {
      if (soonest(one, some) >= lastOut(found)) continue;
      const tries = [
        () => layByList(one, some),
        () => (count ** one.length <= SEQUENCES ? layBySequence(one, some, lastOut(found)) : null),
      ];
      for (const attempt of tries) {
        const tried = attempt();
        if (tried === null || lastOut(tried) >= lastOut(found)) continue;
        [found, order] = [tried, one];
      }
    }
  }
  return inOrder(found, order);
}
