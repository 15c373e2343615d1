import { LID_CLEAR } from '../../../src/core/oven/hands.ts';

interface Bake {
  readonly lidded: number;
  readonly open: number;
  readonly recovery: number;
  readonly loadMinutes: number;
}
interface Loading {
  readonly at: number;
  readonly pot: number;
}

/**
 * The soonest minute at which the last of `count` equal loaves is out, by trying every whole minute
 * of every loading in order of time, up to `most`: written from the rules, not from the plan's code.
 * `most` where nothing is sooner.
 */
export function soonestByGrid(
  count: number,
  free: readonly number[],
  { lidded, open, recovery, loadMinutes: load }: Bake,
  most: number,
): number {
  const bake = lidded + open;
  let soonest = most;
  const clash = (one: Loading, other: Loading): boolean => {
    const [first, then] = one.at <= other.at ? [one, other] : [other, one];
    if (then.at - first.at < load) return true;
    if (first.pot === then.pot) return then.at < first.at + bake + recovery;
    const hands = [then.at - load, then.at] as const;
    const [lid, out] = [first.at + lidded, first.at + bake];
    const atLid = lid > hands[0] - LID_CLEAR && lid < hands[1] + LID_CLEAR;
    return atLid || (out > hands[0] && out < hands[1]);
  };
  const go = (done: readonly Loading[], from: number): void => {
    const left = count - done.length;
    if (left === 0) {
      soonest = Math.min(soonest, from + bake);
      return;
    }
    // What is left needs so many rounds more, whatever the hands do.
    const rounds = Math.ceil(left / free.length);
    const bound = (rounds - 1) * (bake + recovery) + bake;
    for (let at = from; at + bound < soonest; at += 1) {
      for (const [pot, freeAt] of free.entries()) {
        const one = { at, pot };
        if (at < freeAt || done.some((other) => clash(one, other))) continue;
        go([...done, one], at);
      }
    }
  };
  go([], Math.min(...free));
  return soonest;
}
