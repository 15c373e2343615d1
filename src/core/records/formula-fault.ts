import { readFormula } from '../formula/read-formula.ts';

/** Why a fact's formula is none: which field, what was expected, what came; null where it is one. */
export function formulaFault(
  value: unknown,
): { readonly path: string; readonly expected: string; readonly got: unknown } | null {
  const { formula, reason } = { reason: null, ...readFormula(value) };
  if (formula !== null) return null;
  const { path, expected, got } = reason!;
  return { path: path === 'the file' ? 'formula' : `formula.${path}`, expected, got };
}
