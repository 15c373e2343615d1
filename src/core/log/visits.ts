import type { Place, Position } from '../records/position.ts';
import type { LogRecord } from '../records/record.ts';
import type { Instant } from '../units.ts';

/** One stay of a machine at a stage. */
export interface Visit {
  readonly stage: string;
  readonly from: Instant;
  /** When it went on; null: it stands there still. */
  readonly to: Instant | null;
  /** Time led into it, not a press: if the stage calls at all, it called. */
  readonly byDue: boolean;
}

interface Found {
  readonly stage: string;
  readonly from: Instant;
  readonly byDue: boolean;
  /** The row that first told of it. */
  readonly row: number;
}

/** Rows to be read, and what the clock has brought since the last of them. */
export interface Seen {
  readonly rows: readonly LogRecord[];
  /** Where the kitchen stands now; null: the log alone is known. */
  readonly live: Position | null;
}

/** What falls due does so before the next fact; a press is at its fact's own instant. */
const cameByDue = (from: Instant, at: Instant, before: Place | undefined): boolean =>
  from < at || Object.values(before?.marks ?? {}).includes(from);

const inOrder = (found: ReadonlyMap<string, Found>): readonly Found[] =>
  [...found.values()].toSorted((a, b) => a.from - b.from || a.row - b.row);

/**
 * The stays of one machine in the order they came, read off where it stood after each fact. A take-back
 * takes those along that came with the press it withdraws. `over`: when it was done with; null: not yet.
 */
export function visitsIn(
  { rows, live }: Seen,
  placeIn: (position: Position) => Place | undefined,
  over: Instant | null,
): readonly Visit[] {
  const rowOf = new Map(rows.map(({ fact }, row) => [fact.id, row]));
  let found = new Map<string, Found>();
  let last: Place | undefined;
  const see = (place: Place | undefined, at: Instant, row: number, known = found): void => {
    // Of stages of one instant the one it stands at came last.
    const entered = Object.entries(place?.entered ?? {}).toSorted(
      ([a], [b]) => Number(a === place?.stage) - Number(b === place?.stage),
    );
    for (const [stage, from] of entered) {
      const key = `${stage} ${from}`;
      const old = found.get(key) ?? known.get(key);
      const byDue =
        stage === place?.stage ? place.byDue : (old?.byDue ?? cameByDue(from, at, last));
      found.set(key, { stage, from, byDue, row: old?.row ?? row });
    }
    last = place;
    // After a jump it may stand where it had been before: its entry is the old one, its stay a new one.
    if (place !== undefined && inOrder(found).at(-1)?.stage !== place.stage)
      found.set(`${place.stage} again ${row}`, { stage: place.stage, from: at, byDue: false, row });
  };
  rows.forEach(({ fact, position }, row) => {
    const before = found;
    const back = fact.kind === 'takeBack' ? rowOf.get(fact.target) : undefined;
    if (back !== undefined) found = new Map([...found].filter(([, one]) => one.row < back));
    see(placeIn(position), fact.at, row, before);
  });
  if (live !== null) see(placeIn(live), live.now, rows.length);
  const sorted = inOrder(found);
  return sorted.map(({ stage, from, byDue }, n) => ({
    stage,
    from,
    to: sorted[n + 1]?.from ?? over,
    byDue,
  }));
}
