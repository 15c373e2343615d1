import type { Formula } from '../../../core/formula/formula.ts';
import type { BookEntry } from '../../../core/records/book.ts';

/** What a list of ingredients goes by; what a packet says is answered apart. */
const makeup = ({ flours, hydration, salt, fillings }: Formula): string =>
  JSON.stringify([
    hydration,
    salt,
    flours.map(({ name, grain, pct }) => [name, grain, pct]),
    fillings.map(({ name, pct, keeps, soak }) => [name, pct, keeps, soak?.water ?? 0]),
  ]);

/**
 * The version of a formula that was baked last, where its dough is another than the latest's: a label of
 * the latest would name what is not in the loaf. Null: the same, or never baked.
 */
export function bakedOtherwise({
  baked,
  versions,
  latest,
}: Pick<BookEntry, 'baked' | 'versions' | 'latest'>): number | null {
  const was = versions.find(({ formula }) => formula.version === baked?.version)?.formula;
  return was && makeup(was) !== makeup(latest) ? was.version : null;
}
