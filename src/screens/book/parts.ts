import { allergensOf, packetState, unread, type Packed } from '../../core/formula/allergens.ts';
import type { Filling, Flour, Formula } from '../../core/formula/formula.ts';
import { allergenPage } from '../../core/speech/words/allergens.ts';
import { fill } from '../../core/speech/fill.ts';
import { showAllergens } from '../../core/speech/show-allergen.ts';
import type { LineKey } from './lines.ts';

/** A line that has a name and a packet of its own. */
export type PartKey = `flour:${string}` | `filling:${string}`;
export type Part =
  | { readonly kind: 'flour'; readonly of: Flour }
  | { readonly kind: 'filling'; readonly of: Filling };

export const isPart = (key: LineKey): key is PartKey => /^(flour|filling):/.test(key);

const idOf = (key: PartKey): string => key.slice(key.indexOf(':') + 1);

/** @param key a line that the formula has */
export function partOf({ flours, fillings }: Formula, key: PartKey): Part {
  const id = idOf(key);
  return key.startsWith('flour:')
    ? { kind: 'flour', of: flours.find((one) => one.id === id)! }
    : { kind: 'filling', of: fillings.find((one) => one.id === id)! };
}

/** The formula with one of its parts as it is now. */
export function withPart(formula: Formula, { kind, of }: Part): Formula {
  const put = <T extends { readonly id: string }>(list: readonly T[], is: T): readonly T[] =>
    list.map((one) => (one.id === is.id ? is : one));
  return kind === 'flour'
    ? { ...formula, flours: put(formula.flours, of) }
    : { ...formula, fillings: put(formula.fillings, of) };
}

/** The same part with another packet: its list, and whether it was read. */
export const withPacket = (part: Part, change: (of: Packed) => Packed): Part =>
  ({ ...part, of: change(part.of) }) as Part;

/** A thing of another name is another thing: what its old packet said is no answer for it. */
export const renamed = ({ kind, of }: Part, name: string): Part =>
  ({ kind, of: { ...unread(of), name } }) as Part;

/** What is known of its allergens, in a sentence or two. */
export function tellPart(part: Part): string {
  const { kind, of } = part;
  const state = packetState(of);
  const { brings } = allergensOf({
    flours: kind === 'flour' ? [of] : [],
    fillings: kind === 'filling' ? [of] : [],
  });
  const allergens = showAllergens(brings);
  if (kind === 'filling') return fill(allergenPage.told[state], { allergens });
  // A flour's packet that names nothing besides: its grain is there all the same.
  if (state === 'none') return fill(allergenPage.told.read, { allergens });
  return fill(state === 'open' ? allergenPage.byGrain : allergenPage.told[state], { allergens });
}

/** The same in a word or two. A flour always has its grain's gluten, so it is never none. */
export function shortState({ kind, of }: Part): string {
  const state = packetState(of);
  return allergenPage.states[kind === 'flour' && state === 'none' ? 'read' : state];
}
