import { isPlausibleLoss } from '../oven/bake-loss-learned.ts';
import { numberIn } from '../records/reading-number.ts';
import type { Grams } from '../units.ts';
import type { TakenReading } from './bake-readings.ts';
import type { BakeRows } from './bake-rows.ts';

/** Pieces of dough and loaves on the scale. */
export interface BakeWeights {
  readonly pieces: readonly Grams[];
  /** Those that were cool. */
  readonly loaves: readonly Grams[];
  /**
   * Lost from dough to cool loaf, %: of the pieces as they were weighed, else as they were to be. null: no
   * cool loaf was weighed that can be believed.
   */
  readonly loss: number | null;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** What a bake's dough and bread weighed; what was kept as odd is shown and reckoned with in nothing. */
export function bakeWeights(
  { standing }: Pick<BakeRows, 'standing'>,
  readings: readonly TakenReading[],
): BakeWeights {
  // Only a loaf that was cool is written with the dough that it was.
  const doughOf = new Map(
    standing.map(({ id, results }) => [id, results?.find((one) => one.weighed)?.weighed?.dough]),
  );
  const isPiece = ({ reading }: TakenReading): boolean =>
    reading.what === 'firstPiece' || (reading.what === 'weight' && reading.of === 'piece');
  const gramsOf = ({ reading }: TakenReading): Grams => numberIn(reading)!;
  const pieces = readings.filter(isPiece);
  const cool = readings.filter(({ id }) => doughOf.get(id) !== undefined);
  const believed = pieces.filter(({ odd }) => !odd).map(gramsOf);
  const losses = cool
    .filter(({ odd }) => !odd)
    .map((one) => 1 - gramsOf(one) / (believed.length > 0 ? mean(believed) : doughOf.get(one.id)!))
    .filter(isPlausibleLoss);
  return {
    pieces: pieces.map(gramsOf),
    loaves: cool.map(gramsOf),
    loss: losses.length > 0 ? mean(losses) * 100 : null,
  };
}
