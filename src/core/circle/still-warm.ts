import { coolingEnds } from '../oven/cooling-ends.ts';
import type { Fact } from '../records/fact.ts';
import type { BakePlace, Position } from '../records/position.ts';
import type { LogRecord } from '../records/record.ts';
import { HOUR, MINUTE, type Instant, type Minutes } from '../units.ts';

/** A bread that is warm; `until` null: some of it is still in the oven, and nobody knows yet. */
export interface Warm {
  readonly until: Instant | null;
}

type Start = Extract<Fact, { kind: 'start' }>;

/** No loaf is called warm for longer after it came out (oven/cooling-ends.ts: 2 h at most). */
const MOST = 2 * HOUR;

/**
 * When the loaves of a bake are cool: by its minutes of cooling, or from the press that said so sooner;
 * null: they are not all out.
 */
function coolAt({ entered }: BakePlace, cool: Minutes): Instant | null {
  const out = entered['cool.cooling'];
  if (out === undefined) return null;
  const said = entered['cool.handOver'];
  return said !== undefined && said >= out && said < out + cool * MINUTE
    ? said
    : coolingEnds(out, cool).bagAt;
}

const isPartlyOut = (place: BakePlace, { oven }: Position, { loaves }: Start): boolean =>
  place.stage === 'oven.queued' && (place.loaves ?? loaves).some((loaf) => oven.out.includes(loaf));

/**
 * Which breads are warm now, by their formula's id: out of the oven and not yet cool, of bakes that run
 * and of those that were finished since. A bread of two bakes is warm while either is.
 *
 * @example
 * stillWarm([], 0) // → {}
 */
export function stillWarm(
  records: readonly LogRecord[],
  now: Instant,
): Readonly<Record<string, Warm>> {
  const starts = new Map<string, Start>();
  for (const { fact } of records) if (fact.kind === 'start') starts.set(fact.id, fact);
  const seen = new Set<string>();
  const warm: Record<string, Warm> = {};
  // A bake that is finished stands in the last row before it was; one that runs, in the last of all.
  for (const [n, { position }] of records.toReversed().entries()) {
    if (n > 0 && position.now < now - MOST) break;
    for (const [id, place] of Object.entries(position.bakes)) {
      const start = starts.get(place.start);
      if (seen.has(id) || start === undefined) continue;
      seen.add(id);
      const { formula, process } = start.recipe;
      const until = coolAt(place, process.cool);
      if (until === null ? !isPartlyOut(place, position, start) : until <= now) continue;
      const other = warm[formula.id]?.until;
      warm[formula.id] = {
        until: until === null || other === null ? null : Math.max(until, other ?? until),
      };
    }
  }
  return warm;
}
