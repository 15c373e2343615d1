import { RISE_SD } from '../readiness/evidence.ts';
import { IN_BOWL } from '../records/in-bowl.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, MINUTE, type Hours, type Instant, type Minutes } from '../units.ts';
import type { BakePage } from './bake-page.ts';
import type { Visit } from './visits.ts';

/** How far a dough had risen as its bulk was said to be over. */
export interface RiseAtEnd {
  /** Since the mix, %. */
  readonly percent: number;
  /** Its scatter, % points: of the eye, and of what the dough did from the reading to the end. */
  readonly doubt: number;
  /** By eye, and perhaps more: the highest picture there is. */
  readonly atLeast: boolean;
  /** From the reading to the end. */
  readonly before: Minutes;
}

/** How a bulk ended. */
export interface BulkEnd {
  /** The press that said so. */
  readonly at: Instant;
  /** It was found gone over. */
  readonly over: boolean;
  /** Since levain met flour; null: the bake was joined with its dough mixed. */
  readonly hours: Hours | null;
  /** null: nobody told a rise of this dough. */
  readonly rise: RiseAtEnd | null;
}

/** What a dough near its end may rise in an hour, % points. Judgement: 75 % in 4–6 h, the last half in less. */
const HOURLY = 20;

/** What is asked of a bake's page. */
type Told = Pick<BakePage, 'readings' | 'looks'> & { readonly stages: readonly Visit[] };

const isBulk = ({ stage }: { readonly stage: string }): boolean => stage.startsWith('bulk.');

/** Rises of the dough itself: a jar is another body, and what was kept as odd is reckoned with in nothing. */
const risesOf = ({ readings, looks }: Pick<Told, 'readings' | 'looks'>) =>
  [...readings, ...looks].flatMap(({ at, reading }: Seen) =>
    reading.what === 'rise' && reading.of === 'dough' && reading.in !== 'jar' && !reading.odd
      ? [{ at, reading }]
      : [],
  );

/**
 * How the bulk of a bake ended: when it was told ready or gone over, and the last rise that was told of the
 * dough in its tub by then, in a reading or at a look. Null while it runs, where it was given up in it, and
 * where the bake was joined later.
 * Limits: a dough is told ready when somebody looks, not when it was; the rise is as old as its reading, and
 * its doubt says so. Where the kitchen was told that it stands further on, that instant counts as the end.
 *
 * @example
 * bulkEnd({ stages: [], readings: [], looks: [] }) // → null
 */
export function bulkEnd(page: Told): BulkEnd | null {
  const { stages } = page;
  const last = stages.findLastIndex(isBulk);
  const next = stages[last + 1];
  if (last < 0 || !next || !/^(shape|rescue)\./.test(next.stage)) return null;
  const at = next.from;
  const mixed = stages.find(({ stage }) => (IN_BOWL as readonly string[]).includes(stage))!;
  const told = risesOf(page)
    .filter((one) => one.at <= at && one.at >= mixed.from)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  const before = told === undefined ? 0 : (at - told.at) / MINUTE;
  return {
    at,
    over: next.stage.startsWith('rescue.'),
    hours: isBulk(mixed) ? null : (at - mixed.from) / HOUR,
    rise:
      told === undefined
        ? null
        : {
            percent: told.reading.percent,
            doubt: Math.hypot(RISE_SD, (HOURLY * before) / 60),
            atLeast: told.reading.atLeast === true,
            before,
          },
  };
}

/**
 * Hours that the loaves of a bake were cold: from the first in the fridge to the first in the oven; 0 for a
 * bake without a fridge. Null where none of its loaves has come to the oven, or it was joined in the fridge
 * or behind it: how long it had been cold nobody said.
 * Limits: loaves wait cold for a pot, so a later one is longer there; one that stood out before its oven, to
 * come on, is counted as cold.
 *
 * @example
 * coldHours({ stages: [], loads: [] }) // → null
 */
export function coldHours({
  stages,
  loads,
}: Pick<BakePage, 'loads'> & { readonly stages: readonly Visit[] }): Hours | null {
  const joined = stages[0]?.stage;
  const out = loads[0]?.in;
  if (out === undefined || joined === undefined) return null;
  if (joined === 'proof.retard' || joined === 'oven.queued') return null;
  const put = stages.find(({ stage }) => stage === 'proof.retard');
  return put === undefined ? 0 : Math.max(0, (out - put.from) / HOUR);
}
