import type { Keyed } from '../../core/speech/keyed.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { fill } from '../../core/speech/fill.ts';

interface Told {
  readonly label: string;
  /** What is asked when it is opened. */
  readonly ask: string;
  /** What stands, as it is shown; null where it was never said. */
  readonly value: string | null;
}

/** A number keyed in: blank until it is typed, and null again where it is not known after all. */
export interface NumberField extends Told {
  readonly kind: 'number';
  readonly keyed: Keyed;
  /** A count: nothing behind its point. */
  readonly whole: boolean;
  readonly set: (value: number | null) => void;
}

/** One of a few. */
export interface ChoiceField extends Told {
  readonly kind: 'choice';
  readonly chosen: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly set: (value: string) => void;
}

export type Field = NumberField | ChoiceField;

/** A number in a unit that everybody shares. */
export const keyedIn = (
  { least, most }: { readonly least: number; readonly most: number },
  unit: string,
): Keyed => ({
  unit,
  least,
  most,
  range: fill(kitchenFields.range, { least, most, unit }),
  record: (n) => n,
});

/** A typed number as it is kept; null where it is none, or cannot be. */
export const numberTyped = ({ keyed, whole }: NumberField, typed: number | null): number | null =>
  typed === null || typed < keyed.least || typed > keyed.most || (whole && !Number.isInteger(typed))
    ? null
    : keyed.record(typed);
