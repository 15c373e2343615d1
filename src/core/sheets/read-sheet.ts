import { amounts } from '../formula/amounts.ts';
import type { Filling, Flour, Formula } from '../formula/formula.ts';
import type { Misread } from '../formula/read-fields.ts';
import { readFormula } from '../formula/read-formula.ts';
import { guessColumns } from './columns.ts';
import { guessGrain } from './line-kind.ts';
import { decimalSignOf, hasTwoReadings } from './read-amount.ts';
import { idOf } from './sheet-ids.ts';
import { linesOf, rowPath, type SheetAnswers, type SheetLine } from './sheet-lines.ts';
import { tableFault, type Table } from './table.ts';

/** What a sheet does not say and nobody may assume. */
export type SheetAsk =
  | { readonly what: 'sign' | 'convention' | 'levainHydration' }
  | { readonly what: 'keeps'; readonly row: number; readonly name: string };

export type ReadSheet =
  | { readonly formula: Formula; readonly ask?: never; readonly reason?: never }
  | { readonly formula: null; readonly ask: SheetAsk; readonly reason?: never }
  | { readonly formula: null; readonly ask?: never; readonly reason: Misread };

/** Where the rest of a formula comes from: it came in the same file (`own`), or it is baked like that one. */
export interface SheetBase {
  readonly formula: Formula;
  readonly own: boolean;
}

const refuse = (path: string, expected: string, got: string): ReadSheet => ({
  formula: null,
  reason: { path, expected, got },
});

/** What a sheet says by itself, before anyone is asked. */
export const firstAnswers = (table: Table, { formula, own }: SheetBase): SheetAnswers => ({
  columns: guessColumns(table),
  sign: decimalSignOf(table),
  convention: own ? 'whole' : null,
  levainHydration: own ? formula.levain.hydration : null,
  kinds: {},
  keeps: {},
});

/** Numbers that agree but for what floats lose keep what was there. */
const near = (value: number, known: number): number =>
  Math.abs(value - known) <= 1e-9 * Math.max(1, Math.abs(known)) ? known : value;

const sum = (lines: readonly SheetLine[]): number =>
  lines.reduce((all, { amount }) => all + amount, 0);

/** Cells that show 75 % may hold 0.75: then all flour is 1. */
const scaleOf = (flours: number): number => (Math.abs(flours - 1) <= 0.01 ? 100 : 1);

/**
 * A sheet's lines as a formula. What it does not say comes from `base`: the whole of it where it came in
 * the same file, its stages, piece and second water where the loaf is baked like it; an ingredient that
 * `base` has by the same name keeps what is known of it. One question at a time is handed back until
 * all is said. Null with a reason: path (the row where there is one), expected, got. Never throws.
 */
export function readSheet(
  table: Table,
  answers: SheetAnswers,
  base: SheetBase,
  name: string,
): ReadSheet {
  const big = tableFault(table);
  if (big) return { formula: null, reason: big };
  if (answers.sign === null && hasTwoReadings(table))
    return { formula: null, ask: { what: 'sign' } };
  const read = linesOf(table, answers, base.own);
  if (read.lines === null) return { formula: null, reason: read.reason };
  const of = (kind: SheetLine['kind']): SheetLine[] =>
    read.lines.filter((line) => line.kind === kind);

  const flours = of('flour');
  const bowl = sum(flours);
  if (bowl <= 0)
    return refuse('flours', 'flour of more than 0', flours.length > 0 ? '0' : 'no line');
  const scale = read.by === 'pct' ? scaleOf(bowl) : 1;
  if (read.by === 'pct' && Math.abs(bowl * scale - 100) > 1) {
    return refuse('flours', 'flours that sum to 100 %', `a sum of ${Number(bowl.toFixed(2))}`);
  }
  if (of('levain').length + of('levainFlour').length === 0) {
    return refuse('levain', 'a line with the levain', 'none');
  }
  if (answers.convention === null) return { formula: null, ask: { what: 'convention' } };
  const ownWater = of('levainWater')[0]?.amount;
  const ownFlour = sum(of('levainFlour'));
  const told =
    ownWater === undefined
      ? null
      : read.by === 'pct'
        ? ownWater / (scale === 1 ? 100 : 1)
        : ownWater / ownFlour;
  const hydration = told ?? answers.levainHydration;
  if (hydration === null) return { formula: null, ask: { what: 'levainHydration' } };
  const unknown = of('filling').find(
    ({ row, name: own }) => answers.keeps[row] === undefined && !knownFilling(base, own),
  );
  if (unknown)
    return { formula: null, ask: { what: 'keeps', row: unknown.row, name: unknown.name } };

  const levainFlour = ownFlour + sum(of('levain')) / (1 + hydration);
  const isBowl = answers.convention === 'bowl';
  const all = isBowl ? bowl + levainFlour : bowl;
  // Written out of 100 they stand as they are: 33.3 stays 33.3.
  const asWritten = !isBowl && read.by === 'pct' && Math.abs(bowl * scale - 100) <= 0.01;
  const pct = (amount: number): number => (asWritten ? amount * scale : (amount / all) * 100);
  const largest = flours.reduce((best, line) => (line.amount > best.amount ? line : best));
  const water = sum(of('water')) + (isBowl ? levainFlour * hydration : 0);
  const flourIds = new Set<string>();
  const fillingIds = new Set<string>();
  const file = {
    ...rest(base, name),
    flours: flours.map((line): Flour => {
      // A levain is fed from the bag that most of the flour is in (levain-shares.ts).
      const more = isBowl && line === largest ? levainFlour : 0;
      return { ...flourOf(base, line.name, flourIds), pct: pct(line.amount + more) };
    }),
    hydration: pct(water),
    levain: levainOf(base, pct(levainFlour) / 100, hydration),
    salt: pct(sum(of('salt'))),
    fillings: of('filling').map((line): Filling => {
      const keeps = answers.keeps[line.row] ?? 'perishable';
      return { ...fillingOf(base, line.name, keeps, fillingIds), pct: pct(line.amount) };
    }),
  };
  return taken(file, base, [flours, of('filling')]);
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

const knownFilling = ({ formula }: SheetBase, name: string): Filling | undefined =>
  formula.fillings.find((one) => same(one.name, name));

/** Of another sheet's line nobody here has read the packet, whatever its name. */
const withoutPacket = <T extends Flour | Filling>({ packet: _, ...known }: T): Omit<T, 'packet'> =>
  known;

function flourOf({ formula, own }: SheetBase, name: string, ids: Set<string>): Omit<Flour, 'pct'> {
  const known = formula.flours.find((one) => same(one.name, name) && !ids.has(one.id));
  const id = idOf(known?.id ?? name, 'flour', ids);
  if (!known) return { id, name, grain: guessGrain(name) };
  return { ...(own ? known : withoutPacket(known)), id };
}

function fillingOf(
  base: SheetBase,
  name: string,
  keeps: Filling['keeps'],
  ids: Set<string>,
): Omit<Filling, 'pct'> {
  const known = base.formula.fillings.find((one) => same(one.name, name) && !ids.has(one.id));
  const id = idOf(known?.id ?? name, 'filling', ids);
  if (!known) return { id, name, keeps, allergens: [] };
  return { ...(base.own ? known : withoutPacket(known)), id };
}

function levainOf({ formula, own }: SheetBase, pff: number, hydration: number): Formula['levain'] {
  const { levain } = formula;
  const isSame = Math.abs(levain.hydration - hydration) <= 0.01;
  const feed = own || isSame ? levain.feed : { seed: 1, flour: 5, water: 5 * hydration };
  const flours = own && levain.flours ? { flours: levain.flours } : {};
  return {
    pff: near(pff, levain.pff),
    hydration: near(hydration, levain.hydration),
    feed,
    ...flours,
  };
}

/** Of the base what no line of a sheet tells. */
function rest(
  { formula, own }: SheetBase,
  name: string,
): Omit<Formula, 'flours' | 'fillings' | 'levain' | 'salt' | 'hydration'> {
  if (own) return formula;
  const { secondWater, piece, process } = formula;
  return { id: idOf(name, 'bread', new Set()), version: 1, name, secondWater, piece, process };
}

/** Through the one reader; a path into a list is told by the row it came from. */
function taken(
  file: Formula,
  { own }: SheetBase,
  lists: readonly [readonly SheetLine[], readonly SheetLine[]],
): ReadSheet {
  const { formula, reason } = { reason: null, ...readFormula(file) };
  if (formula === null) {
    const [, list, i] = /^(flours|fillings)\[(\d+)\]/.exec(reason!.path) ?? [];
    const row = (list === 'flours' ? lists[0] : lists[1])[Number(i)]?.row;
    const path = row === undefined ? reason!.path : `${rowPath(row)}, ${reason!.path}`;
    return { formula: null, reason: { ...reason!, path } };
  }
  if (own || amounts(formula, 1000).firstWater >= 0) return { formula };
  // Water kept back for later is given up before the levain is called too wet.
  const plain: Formula = { ...formula, secondWater: 0 };
  const { firstWater, levainWater } = amounts(plain, 1000);
  if (firstWater >= 0) return { formula: plain };
  const most = Math.floor(
    ((levainWater + firstWater) / levainWater) * formula.levain.hydration * 100,
  );
  return refuse(
    'levain',
    `at most ${most} % water in it`,
    `${Math.round(formula.levain.hydration * 100)} %`,
  );
}
