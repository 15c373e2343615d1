import { withKeptAllergens } from '../circle/label/kept-allergens.ts';
import type { Formula } from '../formula/formula.ts';
import { readFormula } from '../formula/read-formula.ts';
import type { Instant } from '../units.ts';
import type { LogRecord } from './record.ts';

/** A formula as it stood at one time. `at` null: as it came with the program. */
export interface BookVersion {
  readonly formula: Formula;
  readonly at: Instant | null;
}

/** A bake of a formula, whichever version it pinned. */
export interface BookBake {
  readonly at: Instant;
  readonly version: number;
}

/** One formula of the Book with everything it ever was. */
export interface BookEntry {
  readonly id: string;
  readonly latest: Formula;
  /** Oldest first; the last is `latest`. */
  readonly versions: readonly BookVersion[];
  /** Taken off the list, and not written anew since. */
  readonly off: boolean;
  /** Came with the program. */
  readonly shipped: boolean;
  /** Its latest start that was not taken back. */
  readonly baked: BookBake | null;
}

interface Growing {
  versions: BookVersion[];
  off: boolean;
  shipped: boolean;
  baked: BookBake | null;
}

/** What a start pinned is a version too, where no file and no fact has it any more. */
const pinned = (entry: Growing, formula: Formula, at: Instant): void => {
  if (entry.versions.some((one) => one.formula.version === formula.version)) return;
  const read = readFormula(formula);
  if (read.formula === null) return;
  const younger = entry.versions.findIndex((one) => one.formula.version > formula.version);
  entry.versions.splice(younger < 0 ? entry.versions.length : younger, 0, {
    formula: withKeptAllergens(read.formula),
    at,
  });
};

/**
 * The Book: the formulas that came with the program, each with what was written of it since, and the
 * baker's own, in the order they came to be. A version is never written over: two of one number are
 * both kept, the later is the latest. Allergens that a fact has in a baker's own tongue stand here as they
 * are kept otherwise. What is taken back is a start only; a formula is brought back by writing an older
 * version anew.
 */
export function bookOf(
  records: readonly LogRecord[],
  shipped: readonly Formula[],
): readonly BookEntry[] {
  const entries = new Map<string, Growing>();
  const entryOf = (id: string): Growing => {
    const known = entries.get(id);
    if (known) return known;
    const fresh: Growing = { versions: [], off: false, shipped: false, baked: null };
    entries.set(id, fresh);
    return fresh;
  };
  for (const formula of shipped) {
    const entry = entryOf(formula.id);
    entry.shipped = true;
    entry.versions.push({ formula, at: null });
  }
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const starts: { readonly formula: Formula; readonly at: Instant }[] = [];
  for (const { fact } of records) {
    if (withdrawn.has(fact.id)) continue;
    if (fact.kind === 'formula') {
      const entry = entryOf(fact.formula.id);
      entry.versions.push({ formula: withKeptAllergens(fact.formula), at: fact.at });
      entry.off = false;
    } else if (fact.kind === 'formulaOff') {
      const entry = entries.get(fact.formula);
      if (entry) entry.off = true;
    } else if (fact.kind === 'start') {
      starts.push({ formula: fact.recipe.formula, at: fact.at });
    }
  }
  // After all facts: what was written is known before what was only baked.
  for (const { formula, at } of starts) {
    const entry = entries.get(formula.id);
    if (!entry) continue;
    pinned(entry, formula, at);
    entry.baked = { at, version: formula.version };
  }
  return [...entries].map(([id, { versions, ...entry }]) => ({
    id,
    latest: versions.at(-1)!.formula,
    versions,
    ...entry,
  }));
}

/** The number that a formula's next version has: one above all of them. */
export const nextVersion = ({ versions }: Pick<BookEntry, 'versions'>): number =>
  1 + Math.max(0, ...versions.map(({ formula }) => formula.version));

/** An id that no formula of the Book has, after a name: "lane-wheat-2". Letters, digits and hyphens. */
export function freeId(name: string, book: readonly Pick<BookEntry, 'id'>[]): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 30);
  const stem = plain === '' ? 'bread' : plain;
  const taken = new Set(book.map(({ id }) => id));
  let id = stem;
  for (let n = 2; taken.has(id); n++) id = `${stem}-${n}`;
  return id;
}
