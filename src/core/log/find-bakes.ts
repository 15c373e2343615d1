import { wallTime } from '../day/plan/wall-clock.ts';
import type { Fact } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';
import { notes } from '../speech/en/note.ts';
import type { Instant } from '../units.ts';
import { withdrawnIn } from './bake-rows.ts';

/** One bake of the list, with what it is found by. */
export interface ListedBake {
  readonly bake: string;
  /** The id of its start fact: a bake's name may come again. */
  readonly start: string;
  readonly name: string;
  readonly loaves: number;
  readonly at: Instant;
  /** When it was put away or ended; null: it is open, or the kitchen was put to a place without it. */
  readonly to: Instant | null;
  /** As the baker reads it. */
  readonly note: string | null;
  /** Of its start, "2031-05". */
  readonly month: string;
  /** Name and note without accents and capitals. */
  readonly plain: string;
}

/** What is looked for; what is left out leaves all in. */
export interface BakeQuery {
  /** Words or parts of them, in any order; all must be there, in the name or in the note. */
  readonly text?: string;
  /** "2031-05". */
  readonly month?: string;
}

type Start = Extract<Fact, { kind: 'start' }>;
type Last = Extract<Fact, { kind: 'press' }>;

/** A text without what nobody types: accents, capitals. */
const plainOf = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase();

const noteOf = ({ act, text }: Last): string | null =>
  act !== 'noted' || text === undefined || text === ''
    ? null
    : (notes.find(({ value }) => value === text)?.label ?? text);

/**
 * All bakes of a log, the latest begun first: made once for many searches.
 *
 * @param zone IANA name, of the months
 * @throws RangeError for a zone nobody knows
 * @example
 * listBakes([], 'UTC') // → []
 */
export function listBakes(records: readonly LogRecord[], zone: string): readonly ListedBake[] {
  const withdrawn = withdrawnIn(records);
  const starts: Start[] = [];
  const running = new Map<string, Start>();
  const ends = new Map<string, Last>();
  for (const { fact } of records) {
    if (withdrawn.has(fact.id)) continue;
    if (fact.kind === 'start') {
      starts.push(fact);
      running.set(fact.bake, fact);
    } else if (fact.kind === 'press' && (fact.act === 'noted' || fact.act === 'ended')) {
      const start = running.get(fact.who);
      if (start) ends.set(start.id, fact);
    }
  }
  return starts
    .map(({ id, bake, at, loaves, recipe }): ListedBake => {
      const last = ends.get(id);
      const { name } = recipe.formula;
      const note = last ? noteOf(last) : null;
      const { year, month } = wallTime(at, zone);
      return {
        bake,
        start: id,
        name,
        loaves: loaves.length,
        at,
        to: last?.at ?? null,
        note,
        month: `${year}-${String(month).padStart(2, '0')}`,
        plain: plainOf(`${name} ${note ?? ''}`),
      };
    })
    .toReversed();
}

/**
 * Those of a list that a query means, in the list's order.
 *
 * @example
 * findBakes([], { text: 'cherry' }) // → []
 */
export function findBakes(
  bakes: readonly ListedBake[],
  { text = '', month }: BakeQuery,
): readonly ListedBake[] {
  const words = plainOf(text).split(/\s+/).filter(Boolean);
  return bakes.filter(
    (one) =>
      (month === undefined || one.month === month) &&
      words.every((word) => one.plain.includes(word)),
  );
}

/** The months in which bakes of a list began, the latest first. */
export const monthsOf = (bakes: readonly ListedBake[]): readonly string[] =>
  [...new Set(bakes.map(({ month }) => month))].toSorted().toReversed();
