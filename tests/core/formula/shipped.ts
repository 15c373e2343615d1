import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';

/** A formula file of the app as parsed JSON, unread. */
export const rawFormula = (name: string): unknown =>
  JSON.parse(
    readFileSync(
      fileURLToPath(new URL(`../../../assets/formulas/${name}.json`, import.meta.url)),
      'utf8',
    ),
  );

/** The formulas that come with the app, by what each one shows of a process. */
export const SHIPPED = [
  'cherry-hazelnut', // filled, retarded, pot
  'lane-wheat', // plain, retarded, pot
  'olive-seed', // filled, retarded, stone with steam
  'lane-today', // plain, warm proof, pot
  'barley-tin', // plain, warm proof, tin
  'harbour-rye', // no fold, spooned into its tin
  'seed-oat', // seeded, with a soaker
  'wholemeal', // whole grain, its levain of two flours
  'cheese-seed', // hard cheese, that may stand
] as const;

/** A formula file of the app through its reader. */
export function shippedFormula(name: (typeof SHIPPED)[number]): Formula {
  const { formula, reason } = readFormula(rawFormula(name));
  if (formula === null) throw new Error(`${name}.json: ${JSON.stringify(reason)}`);
  return formula;
}
