import type { Vessel } from '../formula/formula.ts';
import { MINUTE, type Instant } from '../units.ts';
import { firstLoading, type Asks, type Away, type Calls } from './hands.ts';
import type { WaitingLoaf } from './lanes.ts';

/** A loaf with what it asks of the hands, and the pots it may go into, by their place in the list. */
export interface Placeable {
  readonly loaf: WaitingLoaf;
  readonly asks: Asks;
  readonly pots: readonly number[];
  readonly from: Instant;
}

/** What loaves are laid into: from when each pot is free (Infinity: never), its room, its recovery in ms. */
export interface Oven {
  readonly free: readonly Instant[];
  readonly room: readonly number[];
  readonly recovery: number;
  readonly standing: readonly Calls[];
  readonly away: readonly Away[];
}

/** A loaf laid into a pot. */
export interface Laid extends Calls {
  readonly pot: number;
  readonly one: Placeable;
}

export const vesselOf = ({ vessel }: { readonly vessel?: Vessel }): Vessel => vessel ?? 'pot';

/** The earliest turn of a loaf in a pot, beside what is laid by now. */
export function turnIn(
  pot: number,
  one: Placeable,
  freeAt: Instant,
  busy: readonly Calls[],
  { away }: Oven,
): Laid {
  const { asks } = one;
  const loadAt = firstLoading(Math.max(freeAt, one.from), asks, busy, away);
  const lidAt = asks.lid > 0 ? loadAt + asks.lid * MINUTE : null;
  return { pot, one, loadAt, lidAt, outAt: loadAt + asks.out * MINUTE };
}

export const lastOut = (laid: readonly Calls[]): Instant =>
  laid.reduce((last, { outAt }) => Math.max(last, outAt), 0);

/**
 * List scheduling: again and again the earliest loading there is, of all pots and all loaves that are
 * left; among equally early ones the first loaf of the list, into the smallest pot it fits.
 * Source: Graham 1966, Bell System Technical Journal 45:1563.
 */
export function layByList(list: readonly Placeable[], oven: Oven): readonly Laid[] {
  const frees = [...oven.free];
  const busy: Calls[] = [...oven.standing];
  const laid: Laid[] = [];
  const left = [...list];
  for (;;) {
    let best = null as { turn: Laid; loaf: number } | null;
    const known = new Set<string>();
    for (const [loaf, one] of left.entries()) {
      for (const pot of one.pots) {
        if (frees[pot] === Infinity) continue;
        // The next of equal loaves would come to the same instant, and comes after it.
        const key = `${pot} ${one.from} ${one.asks.lid} ${one.asks.out}`;
        if (known.has(key)) continue;
        known.add(key);
        const turn = turnIn(pot, one, frees[pot]!, busy, oven);
        const smaller = best?.loaf === loaf && oven.room[pot]! < oven.room[best.turn.pot]!;
        const { loadAt } = turn;
        if (!best || loadAt < best.turn.loadAt || (loadAt === best.turn.loadAt && smaller)) {
          best = { turn, loaf };
        }
      }
    }
    if (best === null) return laid;
    left.splice(best.loaf, 1);
    laid.push(best.turn);
    busy.push(best.turn);
    frees[best.turn.pot] = best.turn.outAt + oven.recovery;
  }
}
