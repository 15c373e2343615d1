import { ALLERGEN_TEXTS } from '../../formula/allergen-texts.ts';
import { allergenText, isOpen, packetState, type Allergen } from '../../formula/allergens.ts';
import type { Filling, Flour, Formula } from '../../formula/formula.ts';
import { allergenNames } from '../../speech/words/allergens.ts';
import { showPart } from '../../speech/show-part.ts';
import type { LabelList } from '../circle.ts';
import { kindWanted } from './allergen-lists.ts';
import type { LookUp } from './ingredients.ts';
import { plainText } from './plain-text.ts';

/**
 * What has to be answered before there is a label: what a packet names, what in it is still to be looked
 * up, the kind of a fish, what something is made of, how long a filled loaf may be kept. `of`: which
 * flour or filling of the formula; null: the whole loaf.
 */
export interface Wanting {
  readonly key: 'packet' | 'lookUp' | 'kind' | 'madeOf' | 'eatWithin';
  readonly of: { readonly kind: 'flour' | 'filling'; readonly id: string } | null;
  readonly values: Readonly<Record<string, string>>;
}

/** A loaf with a filling that spoils, or with cheese: kept cold once it is baked. Of hard cheese: judgement. */
export const isKeptCold = ({ fillings }: Pick<Formula, 'fillings'>): boolean =>
  fillings.some(({ keeps }) => keeps !== 'shelf');

/**
 * All that keeps a label of a formula from being made, in the order it is asked. No list is none: an
 * empty one is an answer only where its baker has read the packet, a flour's too.
 *
 * @param days a loaf that is kept cold is eaten within so many; null: its baker has not said
 */
export function wantingFor(
  { flours, fillings }: Pick<Formula, 'flours' | 'fillings'>,
  list: LabelList,
  lookUp: LookUp,
  days: number | null,
): readonly Wanting[] {
  const ofPart = (kind: 'flour' | 'filling', part: Flour | Filling): readonly Wanting[] => {
    const wants = (key: Wanting['key'], values = {}): Wanting => ({
      key,
      of: { kind, id: part.id },
      values: { name: showPart(part.name), ...values },
    });
    const texts = part.allergens ?? [];
    return [
      ...(packetState(part) === 'open' ? [wants('packet')] : []),
      ...(isOpen(texts) ? [wants('lookUp')] : []),
      ...(isOpen(texts)
        ? []
        : kindWanted(list, texts).map((one) =>
            wants('kind', { kinds: allergenNames[one], allergen: one }),
          )),
      ...((lookUp(part.name)?.madeOf ?? null) === null ? [wants('madeOf')] : []),
    ];
  };
  return [
    ...flours.flatMap((flour) => ofPart('flour', flour)),
    ...fillings.flatMap((filling) => ofPart('filling', filling)),
    ...(isKeptCold({ fillings }) && days === null
      ? [{ key: 'eatWithin' as const, of: null, values: {} }]
      : []),
  ];
}

/**
 * A list with the kind of an allergen that it had without: 'fish' becomes 'fish (anchovy)'.
 *
 * @example
 * withKind(['milk', 'fish'], 'fish', 'anchovy') // → ['milk', 'fish (anchovy)']
 */
export const withKind = (
  texts: readonly string[],
  allergen: Allergen,
  kind: string,
): readonly string[] => [
  ...texts.filter((text) => text.trim().toLowerCase() !== ALLERGEN_TEXTS[allergen]),
  allergenText(allergen, plainText(kind).replace(/[()]/g, '').trim()),
];
