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

/** A formula file of the app through its reader. */
export function shippedFormula(name: 'cherry-hazelnut' | 'lane-wheat'): Formula {
  const { formula, reason } = readFormula(rawFormula(name));
  if (formula === null) throw new Error(`${name}.json: ${JSON.stringify(reason)}`);
  return formula;
}
