import { FILLING_TEXTS } from '../../core/formula/allergen-texts.ts';
import { fillingOf, type FillingKind } from '../../core/formula/filling-facts.ts';
import type { Filling } from '../../core/formula/formula.ts';
import { fillingNames } from '../../core/speech/words/book.ts';
import { inEnglish } from '../../core/speech/tongue.ts';

export type KnownFilling = keyof typeof fillingNames;
/** All of a filling but its share. */
export type FillingToAdd = Omit<Filling, 'pct'>;

interface Known {
  readonly kind: FillingKind;
  /** Where more is known of it than of its kind. */
  readonly allergen?: keyof typeof FILLING_TEXTS;
  readonly prepare: NonNullable<Filling['prepare']>;
}

/** What kind each is, and how it is made ready. Common practice, no source. */
const KNOWN: Readonly<Record<KnownFilling, Known>> = {
  walnut: { kind: 'nuts', allergen: 'walnut', prepare: ['toast', 'cut'] },
  hazelnut: { kind: 'nuts', allergen: 'hazelnut', prepare: ['toast', 'cut'] },
  sunflower: { kind: 'seeds', prepare: ['toast'] },
  pumpkin: { kind: 'seeds', prepare: ['toast'] },
  sesame: { kind: 'sesame', prepare: ['toast'] },
  linseed: { kind: 'seeds', prepare: ['soak'] },
  raisin: { kind: 'driedFruit', prepare: ['soak', 'drain'] },
  apricot: { kind: 'driedFruit', prepare: ['cut'] },
  olive: { kind: 'dryOlives', prepare: ['cut'] },
  hardCheese: { kind: 'hardCheese', prepare: ['cut'] },
};

/** The short list that a filling may be added from. */
export const KNOWN_FILLINGS = Object.keys(fillingNames) as KnownFilling[];

const withoutShare = (kind: FillingKind, id: string, name: string): FillingToAdd => {
  const { pct: _share, ...rest } = fillingOf(kind, { id, name, pct: 0 });
  return rest;
};

/** One of the short list, with what is known of it; kept by its English name in every tongue. */
export function knownFilling(id: KnownFilling): FillingToAdd {
  const { kind, allergen, prepare } = KNOWN[id];
  const name = inEnglish(() => fillingNames[id]);
  const facts = withoutShare(kind, id, name);
  return { ...facts, ...(allergen ? { allergens: [FILLING_TEXTS[allergen]] } : {}), prepare };
}

/** One of another name, with what is known of its kind; how it is made ready is its baker's to know. */
export const fillingLike = (kind: FillingKind, name: string): FillingToAdd =>
  withoutShare(kind, name, name);
