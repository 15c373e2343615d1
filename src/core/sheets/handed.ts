import type { Formula } from '../formula/formula.ts';
import type { Misread } from '../formula/read-fields.ts';
import type { Table } from './table.ts';

/** What a file holds: formulas; or a sheet, with the formula it was written from where it is ours. */
export type ReadFile =
  | { readonly kind: 'formulas'; readonly formulas: readonly Formula[] }
  | { readonly kind: 'sheet'; readonly table: Table; readonly own: Formula | null }
  | { readonly kind: 'none'; readonly reason: Misread };

/** A QR code to be drawn: modules a side with the blank ones round it, and its dark ones as a path. */
export interface DrawnCode {
  readonly size: number;
  readonly path: string;
}
