import { MOST_BAKES } from '../../../core/day/laid/ask-trouble.ts';
import { standsIn, type Allergen } from '../../../core/formula/allergens.ts';
import type { Filling } from '../../../core/formula/formula.ts';
import type { Batch } from '../../../core/circle/batches.ts';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import type { Instant } from '../../../core/units.ts';
import type { DayDraft } from '../../day-draft.ts';

/** What is asked before a day is laid. */
export type LayNote =
  | { readonly kind: 'many'; readonly most: number; readonly left: readonly Batch[] }
  | { readonly kind: 'stands' }
  | { readonly kind: 'rules'; readonly filling: string };

/** Cheese, egg and fish by what a packet names; what spoils, and cheese that keeps, by how it may stand. */
const RULED: readonly Allergen[] = ['milk', 'egg', 'fish'];

/**
 * Whether places have rules of their own for home-baked bread with it: cheese, meat, egg, fish, cooked
 * vegetables, fresh herbs. Which fillings these are is judgement; what the rules are is for the local
 * authority to say.
 */
export const isRuled = ({ keeps, allergens }: Pick<Filling, 'keeps' | 'allergens'>): boolean =>
  keeps !== 'shelf' || RULED.some((one) => standsIn(allergens, one) === 'named');

/** Those fetched first are laid where there are too many; those of no hour last. */
const byHour = (batches: readonly Batch[]): readonly Batch[] =>
  batches.toSorted((a, b) => (a.at ?? Infinity) - (b.at ?? Infinity));

/** The batches that the Day takes, in the order given, and those that it has no room for. */
export function laidOf(batches: readonly Batch[]): {
  readonly laid: readonly Batch[];
  readonly left: readonly Batch[];
} {
  const first = byHour(batches).slice(0, MOST_BAKES);
  return {
    laid: batches.filter((batch) => first.includes(batch)),
    left: batches.filter((batch) => !first.includes(batch)),
  };
}

/**
 * What is asked before these are laid, in turn. The rules for a filling are asked for each time a day is
 * laid and kept nowhere: a press is little, rules change, and next time the bread may be for others.
 */
export function layNotes(batches: readonly Batch[], planStands: boolean): readonly LayNote[] {
  const { laid, left } = laidOf(batches);
  const ruled = laid.flatMap(({ formula }) => formula.fillings.filter(isRuled));
  const names = [...new Set(ruled.map(({ name }) => name))];
  return [
    ...(left.length > 0 ? [{ kind: 'many', most: MOST_BAKES, left } as const] : []),
    ...(planStands ? [{ kind: 'stands' } as const] : []),
    ...names.map((filling) => ({ kind: 'rules', filling }) as const),
  ];
}

/**
 * The day as it is asked: each batch a bake, due at its earliest hour; where nobody said one, the Day asks.
 * How warm the kitchen is stays open. Nothing in it is a person's.
 */
export const dayDraftOf = (
  batches: readonly Batch[],
  at: (minute: MinuteOfDay) => Instant,
): DayDraft => ({
  bakes: laidOf(batches).laid.map(({ formula, loaves, piece, at: hour }) => ({
    formula: formula.id,
    loaves,
    ...(piece === formula.piece ? {} : { piece }),
    due: hour === null ? null : at(hour),
    pins: {},
  })),
  kitchen: null,
  away: [],
  taken: [],
});
