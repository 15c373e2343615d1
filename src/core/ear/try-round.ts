import { MOST_ACTIVE, type EarPhrase } from './phrases.ts';

/** So many phrases in about a minute, each with so long to say it, ms. Judgement. */
export const TRIES = 8;
export const TRY_WITHIN = 6_000;
/** Whoever is speaking still is heard out, ms. */
export const TRY_MORE = 2_000;

/** One phrase that is asked for, and what is listened for then. */
export interface Tried {
  readonly asked: EarPhrase;
  readonly active: readonly EarPhrase[];
}

/**
 * A try with what somebody is known by: no more is listened for at once than a step of a bake does, and each is
 * asked for about as often. Empty where there is nothing to take it for.
 */
export function tryRound(known: readonly EarPhrase[]): readonly Tried[] {
  const some = known.slice(0, TRIES);
  if (some.length < 2) return [];
  const sets = Math.ceil(some.length / MOST_ACTIVE);
  const size = Math.ceil(some.length / sets);
  const asks = Array.from({ length: sets }, (_, n) => some.slice(n * size, (n + 1) * size));
  const each = Math.floor(TRIES / sets);
  return asks.flatMap((active) =>
    Array.from({ length: each }, (_, n) => ({ asked: active[n % active.length]!, active })),
  );
}

/** What came of one: `wrong`: another was understood; `missed`: none was. */
export type TryOutcome = 'right' | 'wrong' | 'missed';

export interface TryTold {
  readonly outcomes: readonly TryOutcome[];
  /** How loud it was without anybody, dB of full, as often as that was told. */
  readonly rooms: readonly number[];
  /** How often it was too loud to tell. */
  readonly loud: number;
}

export interface Judged {
  readonly right: number;
  readonly wrong: number;
  readonly of: number;
  readonly hears: 'well' | 'often' | 'seldom';
  /** Null: nobody has told. */
  readonly room: 'calm' | 'lively' | 'loud' | null;
}

/** Of eight, at most one was not heard right; at least half were. Judgement. */
const WELL = 7 / 8;
const OFTEN = 1 / 2;
/** A kitchen at rest, and one with its tap running, dB of full, before a tablet's own microphone. Judgement. */
const CALM = -50;
const LIVELY = -35;

const middle = (values: readonly number[]): number | null => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? null;
};

/** What a try says of how it is heard here; counts, for so few tell no more. */
export function judgeTry({ outcomes, rooms, loud }: TryTold): Judged {
  const count = (which: TryOutcome): number => outcomes.filter((one) => one === which).length;
  const [right, of] = [count('right'), outcomes.length];
  const db = middle(rooms);
  const room = (): Judged['room'] => {
    if (loud > of / 4 || (db !== null && db >= LIVELY)) return 'loud';
    return db === null ? null : db >= CALM ? 'lively' : 'calm';
  };
  return {
    right,
    wrong: count('wrong'),
    of,
    hears: right >= of * WELL ? 'well' : right >= of * OFTEN ? 'often' : 'seldom',
    room: room(),
  };
}
