import type { MinuteOfDay } from '../kitchen/equipment.ts';
import { together, type OvenBatch } from './oven-batch.ts';
import { over, roomFor, type Bound, type DayHas } from './cap.ts';
import type { DayKey } from './day-key.ts';
import { bakingMinutes, coolAfter } from './oven-day.ts';

/** What one order asks of a day; `sliced`: before it is handed over. */
export type Asked = OvenBatch & { readonly sliced?: boolean };

/** A bake day with the order on it: minutes of that day, past 1440 on the next. Null: the oven's hours are not said. */
export interface WouldTake {
  readonly takes: boolean;
  /** What there is not enough of; none where it is taken. */
  readonly binds: readonly Bound[];
  /** Of each batch asked for, in its order, how many still go: all of them where it is taken. */
  readonly go: readonly number[];
  /** When the oven's last loaf is out with the whole order in it, however long it goes on. */
  readonly lastOut: MinuteOfDay | null;
  /** Until when some of it is warm, and from when all of it is cool. Null also where one of it bakes nowhere. */
  readonly warmUntil: MinuteOfDay | null;
  readonly coolAt: MinuteOfDay | null;
  /** Whether the oven going on until `lastOut` is all it takes. */
  readonly ifOvenGoesOn: boolean;
}

/** What an order runs past: not what a day had run past that the order has no part in. */
const runsPast = (
  asked: readonly OvenBatch[],
  taken: readonly OvenBatch[],
  has: DayHas,
): readonly Bound[] => {
  const some = asked.filter(({ count }) => count > 0);
  const part: Readonly<Record<Bound, boolean>> = {
    oven: some.some(({ places }) => places > 0),
    pots: some.some(({ places }) => places === 0),
    fridge: some.some((batch) => batch.cold),
    bowls: some.length > 0,
  };
  return over(together(taken, some), has).filter((bound) => part[bound]);
};

/**
 * Whether a day with so much on it takes an order besides: yes, or no and what binds, how many of it
 * still go, and until when the oven would have to go on. `from`: the first loading, a minute of that day.
 * No longer for ten thousand loaves than for one.
 */
export function wouldTake(
  asked: readonly Asked[],
  taken: readonly OvenBatch[],
  has: DayHas,
  from: MinuteOfDay | null,
): WouldTake {
  const all = together(taken, asked);
  const past = runsPast(asked, taken, has);
  const cool = coolAfter(all, asked);
  let beside = taken;
  const go = asked.map((one) => {
    const count = Math.min(one.count, roomFor(one, beside, has).more ?? Infinity);
    beside = together(beside, [{ ...one, count }]);
    return count;
  });
  return {
    takes: past.length === 0,
    binds: past,
    go,
    lastOut: from === null ? null : from + bakingMinutes(all),
    warmUntil: from === null || cool === null ? null : from + cool.warm,
    coolAt: from === null || cool === null ? null : from + cool.cool,
    ifOvenGoesOn: past.length === 1 && past[0] === 'oven',
  };
}

/** The first of some days, in their order, that takes all of an order; null: none of them. */
export const dayWithRoom = (
  asked: readonly OvenBatch[],
  days: readonly { readonly day: DayKey; readonly taken: readonly OvenBatch[] }[],
  has: DayHas,
): DayKey | null => days.find(({ taken }) => runsPast(asked, taken, has).length === 0)?.day ?? null;

/**
 * Whether bread is wanted before it is cool: `warm` in the hand, or cold and still `setting`, as a dense rye
 * is; null: neither, or nobody said when. It may be taken all the same.
 *
 * @example
 * tooEarly(630, { warmUntil: 770, coolAt: 770 }) // → 'warm'
 * tooEarly(800, { warmUntil: 770, coolAt: 1610 }) // → 'setting'
 * tooEarly(770, { warmUntil: 770, coolAt: 770 }) // → null
 */
export function tooEarly(
  at: MinuteOfDay | null,
  { warmUntil, coolAt }: Pick<WouldTake, 'warmUntil' | 'coolAt'>,
): 'warm' | 'setting' | null {
  if (at === null) return null;
  if (warmUntil !== null && at < warmUntil) return 'warm';
  return coolAt !== null && at < coolAt ? 'setting' : null;
}
