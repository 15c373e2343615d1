import { ingredientKey } from '../../../core/circle/ingredient-key.ts';
import { packetState, type Packed } from '../../../core/formula/allergens.ts';
import type { Filling, Flour, Formula } from '../../../core/formula/formula.ts';

/** A flour or a filling of one formula. */
export interface PartAt {
  readonly kind: 'flour' | 'filling';
  readonly id: string;
}
export type Part =
  | { readonly kind: 'flour'; readonly of: Flour }
  | { readonly kind: 'filling'; readonly of: Filling };

export function partAt({ flours, fillings }: Formula, { kind, id }: PartAt): Part | null {
  if (kind === 'flour') {
    const of = flours.find((one) => one.id === id);
    return of ? { kind, of } : null;
  }
  const of = fillings.find((one) => one.id === id);
  return of ? { kind, of } : null;
}

/** The same packet stands behind both: a name and, of a flour, a grain. */
const isSame = (one: Part, other: Part): boolean =>
  one.kind === other.kind &&
  ingredientKey(one.of.name) === ingredientKey(other.of.name) &&
  (one.kind === 'filling' || one.of.grain === (other.of as Flour).grain);

/** Only what a packet says. */
const answerOf = ({ of }: Part): Packed => ({
  ...(of.allergens ? { allergens: of.allergens } : {}),
  ...(of.packet ? { packet: of.packet } : {}),
});

const without = <T extends Packed>({ packet: _, ...rest }: T): T => rest as T;

/**
 * What a packet says, put into a formula: in the part that was asked about, and wherever the same thing
 * stands that nobody has answered for. What was answered there stays. Null: nothing of it changes.
 */
export function withAnswer(formula: Formula, asked: Part, own: boolean): Formula | null {
  let changed = false;
  const put = <T extends Flour | Filling>(part: T, kind: Part['kind']): T => {
    const here = { kind, of: part } as unknown as Part;
    const isAsked = own && kind === asked.kind && part.id === asked.of.id;
    if (!isAsked && !(isSame(here, asked) && packetState(part) === 'open')) return part;
    const next = { ...without(part), ...answerOf(asked) };
    changed ||= JSON.stringify(next) !== JSON.stringify(part);
    return next;
  };
  const next = {
    ...formula,
    flours: formula.flours.map((flour) => put(flour, 'flour')),
    fillings: formula.fillings.map((filling) => put(filling, 'filling')),
  };
  return changed ? next : null;
}
