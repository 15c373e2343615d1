import { doughClock } from '../../clock/dough-clock.ts';
import { rise } from '../../clock/rise.ts';
import { TAU, temperatureAt } from '../../clock/stretch.ts';
import { theta } from '../../clock/theta.ts';
import { bulkDough } from '../../day/bulk-dough.ts';
import type { WaitInput } from '../../day/waits.ts';
import { OPENING_BELIEF } from '../../readiness/belief.ts';
import type { Seen } from '../../records/seen.ts';
import { HOUR, type Hours } from '../../units.ts';
import { bakeLooks } from '../bake-looks.ts';
import { bakeReadings } from '../bake-readings.ts';
import { bakeRows, type BakeRows } from '../bake-rows.ts';
import { bulkEnd } from '../bulk-end.ts';
import { visitsIn, type Visit } from '../visits.ts';
import type { BakeSpan } from './bake-spans.ts';

/** A rise at an amount of the dough clock: hours as if at 26 °C since levain met flour. */
export interface CurveSpot {
  readonly theta: Hours;
  readonly percent: number;
}

/** How a dough rose in its bowl, against its own clock. */
export interface BulkCurve {
  /** What was told of it, in order; a jar's is another body, and is left out. */
  readonly told: readonly CurveSpot[];
  /** What the clock says of it with the starter as it was believed in the end. */
  readonly likely: readonly CurveSpot[];
  /** The clock's amount as the bulk ended. */
  readonly end: Hours;
}

/** Points of a likely curve: enough to look bent on a panel of a few centimetres. */
const POINTS = 24;

const isTold = ({ reading }: Seen): boolean =>
  reading.what === 'rise' && reading.of === 'dough' && reading.in !== 'jar' && !reading.odd;

/** What the models are asked of a bulk that is over, by its facts alone. */
function inputOf({ start, standing }: BakeRows, stages: readonly Visit[], now: number): WaitInput {
  const facts = { start, standing };
  const seen = [...bakeReadings(facts), ...bakeLooks(facts)].filter(({ at }) => at <= now);
  const believed = start.results?.find(({ who, belief }) => who === start.bake && belief);
  return {
    stage: 'bulk.look',
    now,
    recipe: start.recipe,
    kitchen: start.kitchen,
    entered: Object.fromEntries(
      stages.filter(({ from }) => from <= now).map(({ stage, from }) => [stage, from]),
    ),
    touches: 0,
    prior: believed?.belief ?? OPENING_BELIEF,
    seen,
    done: standing.flatMap((fact) =>
      fact.kind === 'press' && fact.act === 'taskDone' && fact.item ? [fact.item] : [],
    ),
    again: true,
  };
}

/**
 * The rise of a bake's bulk against the dough clock, from its facts: its temperatures make the way, its rises
 * stand on it. Null while the bulk runs, where it was given up, and where the bake was joined with its dough
 * mixed: the hours before are not known.
 * Limit: the likely curve is today's clock run over an old bake; what was told then stands in the facts.
 */
export function bulkCurve(span: BakeSpan, withdrawn: ReadonlySet<string>): BulkCurve | null {
  const { bake, id, recipe } = span.start;
  const found = bakeRows(span.rows, bake, { withdrawn, begun: id });
  if (found === null) return null;
  const stages = visitsIn(
    found,
    ({ bakes }) => (bakes[bake]?.start === id ? bakes[bake] : undefined),
    found.end?.fact.at ?? null,
  );
  const over = bulkEnd({ stages, readings: bakeReadings(found), looks: bakeLooks(found) });
  if (over === null || over.hours === null) return null;
  const input = inputOf(found, stages, over.at);
  const { begin, path } = bulkDough(input, TAU.bowl);
  const { p } = doughClock(recipe.formula);
  const hoursAt = (at: number): Hours => Math.max(0, (at - begin) / HOUR);
  const end = hoursAt(over.at);
  const believed = found.standing
    .flatMap(({ results = [] }) => results)
    .findLast(({ who, belief }) => who === bake && belief)?.belief;
  const vigour = Math.exp((believed ?? input.prior).mean);
  const amount = (hours: Hours): Hours => theta(path, 0, hours);
  return {
    end: amount(end),
    told: input.seen
      .filter((one) => isTold(one) && one.at >= begin)
      .toSorted((a, b) => a.at - b.at)
      .map(({ at, reading }) => ({
        theta: amount(hoursAt(at)),
        percent: reading.what === 'rise' ? reading.percent : 0,
      })),
    likely: Array.from({ length: POINTS + 1 }, (_, n) => {
      const hours = (end * n) / POINTS;
      const at = amount(hours);
      return { theta: at, percent: 100 * rise(vigour * at, p, temperatureAt(path, hours)) };
    }),
  };
}
