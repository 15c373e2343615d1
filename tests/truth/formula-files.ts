import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { amounts } from '../../src/core/formula/amounts.ts';
import { brought } from '../../src/core/formula/brought.ts';
import { doughToMix } from '../../src/core/formula/dough-to-mix.ts';
import { countedPct } from '../../src/core/formula/filling-basis.ts';
import { fillingShare } from '../../src/core/formula/filling-share.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import { toBowl } from '../../src/core/formula/in-bowl-percent.ts';
import { readFormula } from '../../src/core/formula/read-formula.ts';
import { relevain } from '../../src/core/formula/relevain.ts';
import { rowsOf, type Mark, type Row } from './row.ts';

/** A worked example of others: a formula file, how much dough of it, and what it must come to. */
interface Example {
  readonly source: string;
  readonly mark: Mark;
  readonly dough:
    | { readonly grams: number }
    | { readonly loaves: number; readonly piece: number; readonly loss?: number };
  readonly formula: unknown;
  readonly rows: readonly {
    readonly what: string;
    /** What is read off the sheet, by its name below; grams, or % where it says so. */
    readonly read: string;
    readonly expected: Row['expected'];
  }[];
}

const FOLDER = fileURLToPath(new URL('formulas/', import.meta.url));

/** Everything a row may read off a formula's sheet, by name. What is not there is no number. */
function readOff(formula: Formula, dough: number, read: string): number {
  const exact = amounts(formula, dough);
  const [what = '', id = '', field = ''] = read.split(/[:.](?=[a-z])|:(?=\d)/);
  const { totalFlour, levainFlour, levainWater, finalWater } = exact;
  const pctOf = (id: string): number => formula.flours.find((f) => f.id === id)?.pct ?? NaN;
  const plain: Readonly<Record<string, number>> = {
    ...(exact as unknown as Record<string, number>),
    water: finalWater + levainWater,
    bowlFlour: totalFlour - levainFlour,
    hydration: ((finalWater + levainWater) / totalFlour) * 100,
    pff: (levainFlour / totalFlour) * 100,
    saltPct: (exact.salt / totalFlour) * 100,
    fillingShare: fillingShare(formula) * 100,
    broughtSalt: brought(formula).salt,
  };
  switch (what) {
    case 'bowl':
      return (toBowl(formula) as unknown as Record<string, number>)[id] ?? NaN;
    case 'flour':
      return (pctOf(id) * totalFlour) / 100;
    case 'filling':
      return exact.fillings.find((one) => one.id === id)?.grams ?? NaN;
    case 'counted': {
      const pct = formula.fillings.find((one) => one.id === id)?.pct ?? NaN;
      return countedPct({ ...formula, fillingsOf: 'dough' }, pct);
    }
    case 'relevain': {
      const next = relevain(formula, Number(id)).formula;
      return next === null ? NaN : readOff(next, dough, field);
    }
    default:
      return plain[what] ?? NaN;
  }
}

/** The rows of every file in tests/truth/formulas, each through the one reader of formula files. */
export function fileRows(): Row[] {
  const files = readdirSync(FOLDER).sort();
  return files.flatMap((file) => {
    const example = JSON.parse(readFileSync(FOLDER + file, 'utf8')) as Example;
    const { formula, reason } = readFormula(example.formula);
    if (formula === null) throw new Error(`${file}: ${JSON.stringify(reason)}`);
    const { dough } = example;
    const grams =
      'grams' in dough ? dough.grams : doughToMix(dough.loaves, dough.piece, dough.loss);
    const row = rowsOf('formula', example.mark, example.source);
    return example.rows.map(({ what, read, expected }) =>
      row(`${formula.name}: ${what}`, readOff(formula, grams, read), expected),
    );
  });
}
