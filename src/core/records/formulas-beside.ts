import type { Log } from './merge-logs.ts';
import type { LogRecord } from './record.ts';

const formulaOf = ({ fact }: LogRecord): string | null =>
  fact.kind === 'formula' ? fact.formula.id : fact.kind === 'formulaOff' ? fact.formula : null;

/** The ids of formulas that a log itself began: one that it went on with has a later version alone. */
const begunIn = (log: Log): ReadonlySet<string> =>
  new Set(
    log.flatMap(({ fact }) =>
      fact.kind === 'formula' && fact.formula.version === 1 ? [fact.formula.id] : [],
    ),
  );

/**
 * Facts about formulas that only other tablets have: a Book has them under its own facts. What came with the
 * program, or was begun here under the same id, stays as it is here; of two other tablets that began one id
 * each by itself the first has it.
 *
 * @param shipped ids of those that came with the program
 */
export function formulasBeside(
  others: readonly Log[],
  own: Log,
  shipped: ReadonlySet<string>,
): readonly LogRecord[] {
  const here = begunIn(own);
  const from = new Map<string, string>();
  const had = new Set<string>();
  return others.flatMap((log) =>
    log.filter((record) => {
      const id = formulaOf(record);
      if (id === null || shipped.has(id) || here.has(id) || had.has(record.fact.id)) return false;
      // Logs that begin alike have its first fact in common.
      const first = log.find((one) => formulaOf(one) === id)!.fact.id;
      if ((from.get(id) ?? first) !== first) return false;
      from.set(id, first);
      had.add(record.fact.id);
      return true;
    }),
  );
}
