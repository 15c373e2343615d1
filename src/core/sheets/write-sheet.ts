import type { Formula } from '../formula/formula.ts';
import { levainShares } from '../formula/levain-shares.ts';
import { fill } from '../speech/fill.ts';
import { sheetWords as words } from '../speech/words/sheets.ts';
import type { Grams } from '../units.ts';
import { KIND_WORDS, TOLD_TWICE } from './line-kind.ts';

/** A cell to be written: a text, a number to type over, or one that is reckoned, with what it comes to. */
export type WrittenCell =
  | { readonly text: string }
  | { readonly number: number; readonly is: 'pct' | 'grams' }
  | { readonly cell: string; readonly value: number; readonly is: 'pct' | 'grams' }
  | null;

/** A sheet to be written; `flourCell` is the address of the weight that everything follows. */
export interface WrittenSheet {
  readonly rows: readonly (readonly WrittenCell[])[];
  readonly flourCell: string;
}

type Kept = { readonly address: string; readonly value: number };

/** The heading over weights: what reads a sheet of ours looks for it. */
const GRAMS = 'g';

/** What floats add at their end is no number of a baker's: 9, not 9.000000000000002. */
const tidy = (value: number): number => Number(value.toPrecision(13));

/** Rows as they grow; columns are A name, B kind, C %, D grams. */
class Rows {
  readonly rows: WrittenCell[][] = [];

  /** The number that the next row has. */
  get next(): number {
    return this.rows.length + 1;
  }

  text(...texts: readonly string[]): void {
    this.rows.push(texts.map((text) => (text === '' ? null : { text })));
  }

  /** A line; hands back where its grams stand. A string in `pct` or `grams` is a formula. */
  line(
    name: string,
    kind: string,
    pct: number | readonly [string, number] | null,
    grams: number | readonly [string, number],
  ): Kept {
    const cell = (
      is: 'pct' | 'grams',
      held: number | readonly [string, number] | null,
    ): WrittenCell =>
      held === null
        ? null
        : typeof held === 'number'
          ? { number: tidy(held), is }
          : { cell: held[0], value: held[1], is };
    const address = `D${this.next}`;
    this.rows.push([{ text: name }, { text: kind }, cell('pct', pct), cell('grams', grams)]);
    return { address, value: typeof grams === 'number' ? grams : grams[1] };
  }
}

/**
 * A formula as a live sheet for `flour` grams of all flour: % are numbers to type over, weights are
 * reckoned from them and from the one cell of all flour. Above, everything in % of all flour; below, what
 * goes into the bowl. Both sums are the dough. Exact grams, rounded for no scale.
 */
export function writeSheet(formula: Formula, flour: Grams): WrittenSheet {
  const { flours, fillings, levain } = formula;
  const out = new Rows();
  out.text(formula.name);
  out.text(words.note);
  out.text(words.ingredient, words.kind, words.pct, GRAMS);
  const first = out.next + 1;
  const last = first + flours.length - 1;
  const flourCell = `D${out.next}`;
  const fixed = `D$${out.next}`;
  const allPct = flours.reduce((sum, { pct }) => sum + pct, 0);
  out.line(words.allFlour, TOLD_TWICE.all, [`SUM(C${first}:C${last})`, allPct], flour);
  const share = (name: string, kind: string, pct: number): Kept =>
    out.line(name, kind, pct, [`C${out.next}*${fixed}/100`, (tidy(pct) * flour) / 100]);

  const whole = flours.map(({ name, pct }) => share(name, KIND_WORDS.flour, pct));
  const water = share(words.water, KIND_WORDS.water, formula.hydration);
  const salt = share(words.salt, KIND_WORDS.salt, formula.salt);
  const further: (Kept & { readonly name: string })[] = [];
  for (const { name, pct, soak } of fillings) {
    const row = out.next;
    further.push({ name, ...share(name, KIND_WORDS.filling, pct) });
    if (!soak) continue;
    const soaker = fill(words.soaker, { name });
    const ofFlour = (pct * soak.water) / 100;
    const kept = out.line(
      soaker,
      TOLD_TWICE.soaker,
      [`C${row}*${soak.water}/100`, ofFlour],
      [`D${row}*${soak.water}/100`, (ofFlour * flour) / 100],
    );
    further.push({ name: soaker, ...kept });
  }
  const end = out.next - 1;
  const dough = [...whole, water, salt, ...further].reduce((sum, { value }) => sum + value, 0);
  out.line(
    words.dough,
    TOLD_TWICE.sum,
    [`SUM(C${first}:C${end})`, (dough / flour) * 100],
    [`SUM(D${first}:D${end})`, dough],
  );
  out.text('');

  out.rows.push([{ text: words.bowl }, { text: TOLD_TWICE.bowl }, { text: words.part }]);
  const begin = out.next;
  const own = share(words.levainFlour, KIND_WORDS.levainFlour, levain.pff * 100);
  const wet = out.line(words.levainWater, KIND_WORDS.levainWater, levain.hydration * 100, [
    `C${out.next}*${own.address}/100`,
    own.value * levain.hydration,
  ]);
  const parts = levainShares(flours, levain);
  flours.forEach(({ name }, i) => {
    const part = ((parts[i] ?? 0) / levain.pff) * 100;
    const from = whole[i]!;
    out.line(name, TOLD_TWICE.bowl, part, [
      `${from.address}-C${out.next}*${own.address}/100`,
      from.value - (part * own.value) / 100,
    ]);
  });
  const kept = formula.secondWater * water.value;
  const second = `D${out.next + 1}`;
  out.line(words.firstWater, TOLD_TWICE.bowl, null, [
    `${water.address}-${wet.address}-${second}`,
    water.value - wet.value - kept,
  ]);
  out.line(words.secondWater, TOLD_TWICE.bowl, formula.secondWater * 100, [
    `C${out.next}*${water.address}/100`,
    kept,
  ]);
  for (const { name, address, value } of [{ name: words.salt, ...salt }, ...further]) {
    out.line(name, TOLD_TWICE.bowl, null, [address, value]);
  }
  out.line(words.dough, TOLD_TWICE.sum, null, [`SUM(D${begin}:D${out.next - 1})`, dough]);
  return { rows: out.rows, flourCell };
}
