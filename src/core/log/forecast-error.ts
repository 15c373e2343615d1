import type { Fact, Result } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';
import { MINUTE, type Instant, type Minutes } from '../units.ts';

/** What a bulk's first forecast was, and what came of it. */
export interface ForecastError {
  /** When it was told: as the bulk began, before its rise was seen. */
  readonly told: Instant;
  /** The likely hour it gave. */
  readonly likely: Instant;
  /** The window it was told in: four of five doughs are ready within it, if it is honest. null: none was told. */
  readonly window: { readonly earliest: Instant; readonly latest: Instant } | null;
  /** The press that ended the bulk. */
  readonly ended: Instant;
  /** Ended less likely: above 0 the dough took longer than was told. */
  readonly late: Minutes;
  /** It was found gone over: it was ready earlier than `ended`, nobody knows when. */
  readonly over: boolean;
}

const isForecast =
  (bake: string) =>
  ({ who, stage, marks }: Result): boolean =>
    who === bake && stage.startsWith('bulk.') && marks['likely'] !== undefined;

const endsBulk = (fact: Fact, bake: string): boolean =>
  fact.kind === 'press' &&
  fact.who === bake &&
  (fact.act === 'bulkReady' || fact.act === 'bulkOver');

/** The places of facts whose forecasts rest on a number that was mended later: keyed wrong, they foretold nothing. */
const mistaken = (facts: readonly Fact[]): ReadonlySet<number> =>
  new Set(
    facts.flatMap((fact, mended) => {
      if (fact.kind !== 'correct') return [];
      const keyed = facts.findIndex(({ id }) => id === fact.target);
      return keyed < 0 ? [] : Array.from({ length: mended - keyed }, (_, n) => keyed + n);
    }),
  );

/**
 * By how much the first forecast of a bake's bulk missed, from what its facts carried then: no model
 * runs, and a later reading's forecast is not asked. Null while the bulk runs, where it was given up,
 * where the bake was joined with its dough mixed (the hours before were not known), and where the
 * kitchen was told where it stands in between. What was taken back is left out,
 * and so is what was told on a reading that was mended later: the forecast on the mended one is the first.
 * Limit: a bulk ends with the press that says so, and a baker looks when called; a dough that was
 * ready before its look reads later than it was.
 *
 * @example
 * forecastError([], 'a') // → null
 */
export function forecastError(records: readonly LogRecord[], bake: string): ForecastError | null {
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const facts = records.map(({ fact }) => fact).filter(({ id }) => !withdrawn.has(id));
  const wrong = mistaken(facts);
  const from = facts.findIndex(
    ({ results }, n) => !wrong.has(n) && results?.some(isForecast(bake)),
  );
  const to = facts.findLastIndex((fact) => endsBulk(fact, bake));
  const [first, last] = [facts[from], facts[to]];
  if (first === undefined || last?.kind !== 'press' || first.kind === 'start') return null;
  if (facts.slice(from, to + 1).some(({ kind }) => kind === 'jump')) return null;
  const { likely, earliest, latest } = first.results!.find(isForecast(bake))!.marks;
  return {
    told: first.at,
    likely: likely!,
    window: earliest === undefined || latest === undefined ? null : { earliest, latest },
    ended: last.at,
    late: (last.at - likely!) / MINUTE,
    over: last.act === 'bulkOver',
  };
}
