import { ALLERGEN_TEXTS, GLUTEN_OF, KIND_TEXTS } from './allergen-texts.ts';
import type { Filling, Flour, Formula } from './formula.ts';

/** What a label may have to name; its texts and their source in allergen-texts.ts. */
export type Allergen = keyof typeof ALLERGEN_TEXTS;
/** Those whose grain or nut is named with them. */
export type KindedAllergen = keyof typeof KIND_TEXTS;

/** All of them, those that bread brings most often first (judgement). */
export const ALLERGENS = Object.keys(ALLERGEN_TEXTS) as readonly Allergen[];

export const hasKinds = (allergen: Allergen): allergen is KindedAllergen =>
  Object.hasOwn(KIND_TEXTS, allergen);

/** One text of a list: which allergen, of which kind, and whether it is still to be looked up. */
interface Entry {
  readonly text: string;
  readonly allergen: Allergen | null;
  readonly kind: string | null;
  readonly open: boolean;
}

const KIND = /\((.+)\)$/;

/** 'milk', 'milk, if the packet says so', 'fish (cod)', 'tree nuts (walnut)', 'tree nuts (name the nut)'. */
const read = (text: string): Entry => {
  const plain = text.trim().toLowerCase();
  const allergen =
    ALLERGENS.find((one) => {
      const name = ALLERGEN_TEXTS[one];
      return plain === name || plain.startsWith(`${name} (`) || plain.startsWith(`${name},`);
    }) ?? null;
  if (allergen === null) return { text, allergen, kind: null, open: false };
  const [, kind] = KIND.exec(text.trim()) ?? [];
  const asked = kind === undefined || /^name the /i.test(kind);
  // A fish or a crab may have its kind too; without one it is named all the same.
  const isWhole = !hasKinds(allergen) && plain === ALLERGEN_TEXTS[allergen];
  return { text, allergen, kind: asked ? null : kind, open: asked && !isWhole };
};

/** Which of ours a text of a list is; null: it came with a file. */
export const allergenIn = (text: string): Allergen | null => read(text).allergen;

/** A list, what a file put into one pair of brackets each by itself: 'tree nuts (walnut, hazelnut)'. */
const readAll = (list: readonly string[]): readonly Entry[] =>
  list.flatMap((text) => {
    const entry = read(text);
    const kinds = entry.kind?.split(/, */) ?? [];
    if (entry.allergen === null || kinds.length < 2) return [entry];
    return kinds.map((kind) => read(allergenText(entry.allergen!, kind)));
  });

/** As it is kept: 'tree nuts (walnut)'. */
export const allergenText = (allergen: Allergen, kind?: string): string =>
  kind === undefined ? ALLERGEN_TEXTS[allergen] : `${ALLERGEN_TEXTS[allergen]} (${kind})`;

/** How an allergen stands in a list: named, still to be looked up, or not there. */
export function standsIn(list: readonly string[], allergen: Allergen): 'named' | 'open' | 'no' {
  const own = readAll(list).filter((entry) => entry.allergen === allergen);
  if (own.length === 0) return 'no';
  return own.some(({ open }) => !open) ? 'named' : 'open';
}

/** The grains or the nuts that a list names; others than a label's own among them. */
export const kindsIn = (list: readonly string[], allergen: Allergen): readonly string[] =>
  readAll(list).flatMap((entry) => {
    return entry.allergen === allergen && entry.kind !== null ? [entry.kind] : [];
  });

/** Texts of a list that are none of the names we know: they came with a file. */
export const ownTexts = (list: readonly string[]): readonly string[] =>
  list.filter((text) => read(text).allergen === null);

/** Something in a list is still to be looked up. */
export const isOpen = (list: readonly string[]): boolean => list.some((text) => read(text).open);

/**
 * A list with one allergen put in or taken out: of what has kinds, one kind; what was to be looked up is
 * settled by it.
 *
 * @example
 * withAllergen(['milk, if the packet says so'], 'milk') // → ['milk']
 * withAllergen(['tree nuts (name the nut)'], 'nuts', 'walnut') // → ['tree nuts (walnut)']
 * withAllergen(['milk'], 'milk') // → []
 */
export function withAllergen(
  list: readonly string[],
  allergen: Allergen,
  kind?: string,
): readonly string[] {
  const isIt = (entry: Entry): boolean =>
    entry.allergen === allergen &&
    !entry.open &&
    (kind === undefined || entry.kind?.toLowerCase() === kind.toLowerCase());
  const entries = readAll(list);
  const had = entries.some(isIt);
  const kept = entries
    .filter((entry) => !isIt(entry) && !(entry.allergen === allergen && entry.open))
    .map(({ text }) => text);
  return had ? kept : [...kept, allergenText(allergen, kind)];
}

/** A flour or a filling, as far as its packet goes. */
export type Packed = Pick<Filling, 'packet'> & { readonly allergens?: readonly string[] };

/**
 * How a list stands: read off the packet by the baker, with names or with none; from memory, as the
 * program or a file had it; or open: nobody has answered, which is never none.
 */
export function packetState({
  allergens = [],
  packet,
}: Packed): 'open' | 'memory' | 'none' | 'read' {
  if (packet === 'read') return allergens.length > 0 ? 'read' : 'none';
  return allergens.length > 0 ? 'memory' : 'open';
}

/** Its packet is not read, or no more: what is listed is from memory. */
export function unread<T extends Packed>(thing: T): T {
  const { packet: _, ...rest } = thing;
  return rest as T;
}

/** The same thing with another list: answered by its baker, unless it is empty or holds what is to be looked up. */
export function withList<T extends Packed>(thing: T, allergens: readonly string[]): T {
  const answered = allergens.length > 0 && !isOpen(allergens);
  return { ...unread(thing), allergens, ...(answered ? { packet: 'read' } : {}) } as T;
}

/** Its baker has read the packet, and it names none. */
export const namesNone = <T extends Packed>(thing: T): T => ({
  ...thing,
  allergens: [],
  packet: 'read',
});

/** All that a flour brings: its grain's gluten first. */
export const ofFlour = ({ grain, allergens = [] }: Flour): readonly string[] => {
  const own = allergenText('gluten', GLUTEN_OF[grain]);
  return [own, ...allergens.filter((text) => text !== own)];
};

/**
 * What all of a formula brings, each allergen once with its kinds, in the order of the list and then what
 * a file had besides; and the fillings that nobody has answered for.
 */
export function allergensOf({ flours, fillings }: Pick<Formula, 'flours' | 'fillings'>): {
  readonly brings: readonly string[];
  readonly unanswered: readonly string[];
} {
  const all = [...flours.flatMap(ofFlour), ...fillings.flatMap(({ allergens }) => allergens)];
  const once = (texts: readonly string[]): readonly string[] => [...new Set(texts)];
  const brings = ALLERGENS.flatMap((allergen) => {
    const stands = standsIn(all, allergen);
    if (stands === 'no') return [];
    if (stands === 'open') {
      return once(all.filter((text) => read(text).allergen === allergen)).slice(0, 1);
    }
    const kinds = once(kindsIn(all, allergen));
    return [kinds.length > 0 ? allergenText(allergen, kinds.join(', ')) : allergenText(allergen)];
  });
  return {
    brings: [...brings, ...once(ownTexts(all))],
    unanswered: fillings.filter((one) => packetState(one) === 'open').map(({ name }) => name),
  };
}
