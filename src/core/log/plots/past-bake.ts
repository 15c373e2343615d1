import type { Belief } from '../../readiness/belief.ts';
import type { Celsius, Hours, Instant } from '../../units.ts';
import { bakeLoads } from '../bake-loads.ts';
import { bakeLooks } from '../bake-looks.ts';
import { bakeReadings, type TakenReading } from '../bake-readings.ts';
import { bakeRows } from '../bake-rows.ts';
import { bulkEnd, coldHours, type RiseAtEnd } from '../bulk-end.ts';
import { forecastError, type ForecastError } from '../forecast-error.ts';
import type { TurnedOut } from '../turned-out.ts';
import { visitsIn } from '../visits.ts';
import type { BakeSpan } from './bake-spans.ts';
import { plotTurn, type PlotTurn } from './plot-turn.ts';

/** What the plots know of one bake. */
export interface PastBake {
  /** The id of its start fact. */
  readonly start: string;
  /** The formula's id, and the bread's name. */
  readonly formula: string;
  readonly name: string;
  readonly at: Instant;
  readonly over: boolean;
  readonly turned: PlotTurn;
  /** Rise at the end of the bulk; null: the bulk did not end, or nobody told a rise. */
  readonly rise: RiseAtEnd | null;
  readonly bulkHours: Hours | null;
  readonly coldHours: Hours | null;
  /** As it was first measured after the mix. */
  readonly dough: Celsius | null;
  /** As last measured in this bake, else as it was told at its start. */
  readonly kitchen: Celsius;
  /** Of the starter, as the bake ended. */
  readonly belief: Belief | null;
  /** Whether this bake taught anything of the starter: else the belief is but handed on. */
  readonly taught: boolean;
  readonly forecast: ForecastError | null;
}

/** Less than this of ln v is the dust of a grid, not a starter that was seen. Judgement. */
const DUST = 0.01;
const isMoved = (a: Belief, b: Belief): boolean =>
  Math.abs(a.mean - b.mean) > DUST || Math.abs(a.sd - b.sd) > DUST;

const celsiusOf = (
  readings: readonly TakenReading[],
  what: 'doughTemperature' | 'kitchenTemperature',
): readonly Celsius[] =>
  readings.flatMap(({ reading, odd }) => (reading.what === what && !odd ? [reading.celsius] : []));

/**
 * One bake of a log as the plots know it, by its own rows and none else. `turned` as the list of bakes has it:
 * a bake is told alike wherever it is told of.
 */
export function pastBake(
  span: BakeSpan,
  withdrawn: ReadonlySet<string>,
  turned: TurnedOut,
): PastBake {
  const { start, over, cut } = span;
  const { bake, id, at, recipe } = start;
  const found = bakeRows(span.rows, bake, { withdrawn, begun: id })!;
  const { standing, end } = found;
  // Of a bake's page only what is plotted: a log of years holds thousands.
  const stages = visitsIn(
    found,
    ({ bakes }) => (bakes[bake]?.start === id ? bakes[bake] : undefined),
    end?.fact.at ?? null,
  );
  const readings = bakeReadings(found);
  const loads = bakeLoads(found);
  const beliefs = standing.flatMap(({ results = [] }) =>
    results.flatMap(({ who, belief }) => (who === bake && belief ? [belief] : [])),
  );
  const [first, believed] = [beliefs[0], beliefs.at(-1)];
  const bulk = bulkEnd({ stages, readings, looks: bakeLooks(found) });
  return {
    start: id,
    formula: recipe.formula.id,
    name: recipe.formula.name,
    at,
    over,
    turned: plotTurn(turned, cut?.read ?? null),
    rise: bulk?.rise ?? null,
    bulkHours: bulk?.hours ?? null,
    coldHours: coldHours({ stages, loads }),
    dough: celsiusOf(readings, 'doughTemperature')[0] ?? null,
    kitchen: celsiusOf(readings, 'kitchenTemperature').at(-1) ?? start.kitchen,
    belief: believed ?? null,
    taught: first !== undefined && isMoved(first, believed!),
    forecast: forecastError(span.rows, bake),
  };
}
