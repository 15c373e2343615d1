import { over, roomFor, usedOf, type Bound } from '../../../core/circle/cap.ts';
import { dayRoom, type RoomAsk } from '../../../core/circle/day-room.ts';
import { ovenBatch } from '../../../core/circle/oven-batch.ts';
import { breadsPage, roomPage } from '../../../core/speech/words/circle-oven.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import type { Formula } from '../../../core/formula/formula.ts';

export type UseOf = Exclude<Bound, 'pots'>;
const USES: readonly UseOf[] = ['oven', 'fridge', 'bowls'];

/** What one thing of a day is used: in words, and as a share of what there is. */
export interface UseShown {
  readonly bound: UseOf;
  readonly name: string;
  /** '2 h 18 of 3 h 02' */
  readonly value: string;
  readonly taken: string;
  /** '–' where nobody said it. */
  readonly of: string;
  readonly left: string;
  /** 0 to 1; null where nobody said what there is. */
  readonly share: number | null;
  readonly state: 'free' | 'full' | 'over' | null;
}

const NONE = '–';
const numbers = (bound: UseOf, n: number): string => (bound === 'oven' ? showLength(n) : String(n));

/** Free as long as one bread of the list still goes by it. */
function stateOf(bound: UseOf, ask: RoomAsk, listed: readonly Formula[]): UseShown['state'] {
  const { taken, has } = dayRoom(ask);
  if (over(taken, has).includes(bound)) return 'over';
  const limits = listed.flatMap((formula) => {
    const { limits } = roomFor(ovenBatch(formula, ask.kitchen, 1), taken, has);
    return limits[bound] ?? [];
  });
  return limits.length > 0 && limits.every((more) => more === 0) ? 'full' : 'free';
}

/** What of a day its orders use. `listed`: breads that can be ordered. */
export function usesOf(ask: RoomAsk, listed: readonly Formula[]): readonly UseShown[] {
  const { taken, has } = dayRoom(ask);
  const used = usedOf(taken, has);
  const there = { oven: has.oven, fridge: has.fridge, bowls: has.bowls.count };
  return USES.map((bound) => {
    const [n, of] = [used[bound], there[bound]];
    const values = { count: n, time: showLength(n), of: of ?? 0, until: showLength(of ?? 0) };
    return {
      bound,
      name: roomPage.name[bound],
      value: fill(of === null ? roomPage.unsaid[bound] : roomPage.used[bound], values),
      taken: numbers(bound, n),
      of: of === null ? NONE : numbers(bound, of),
      left: of === null ? NONE : numbers(bound, Math.max(0, of - n)),
      share: of === null ? null : Math.min(1, n / Math.max(of, 1)),
      state: of === null ? null : stateOf(bound, ask, listed),
    };
  });
}

/** A use in one sentence: 'Oven: 2 h 18 of 3 h 02, free.' */
export const useWords = ({ name, value, state }: UseShown): string =>
  state === null
    ? fill(roomPage.lineUnsaid, { name, value })
    : fill(roomPage.line, { name, value, words: roomPage.state[state] });

/** One bread of a day: how many are ordered, how many more go, and with what that ends. */
export interface BreadShown {
  readonly bread: string;
  readonly name: string;
  readonly ordered: number;
  readonly more: string;
  readonly binds: string;
}

/** Every bread that is ordered or may be, the most ordered first. */
export function breadsShown(ask: RoomAsk, listed: readonly Formula[]): readonly BreadShown[] {
  const { taken, has } = dayRoom(ask);
  const ordered = new Map<string, number>();
  for (const { bread, count } of taken) {
    ordered.set(bread, (ordered.get(bread) ?? 0) + count);
  }
  const some = ask.breads.filter(
    ({ id }) => ordered.has(id) || listed.some((formula) => formula.id === id),
  );
  return some
    .map((formula) => {
      const { id, name } = formula;
      const { more, binds } = roomFor(ovenBatch(formula, ask.kitchen, 1), taken, has);
      return {
        bread: id,
        name: showBread(name),
        ordered: ordered.get(id) ?? 0,
        more: String(more ?? breadsPage.noLimit),
        binds: binds.map((bound) => breadsPage.binds[bound]).join(', ') || NONE,
      };
    })
    .toSorted((a, b) => b.ordered - a.ordered);
}
