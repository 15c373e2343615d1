import { showKind } from '../../speech/show-allergen.ts';
import { listNames } from '../../speech/words/label.ts';
import { ALLERGENS, kindsIn, ownTexts, standsIn, type Allergen } from '../../formula/allergens.ts';
import type { LabelList } from '../circle.ts';
import { plainText } from './plain-text.ts';

/** Grains of wheat's own kin, which the lists of the US and of Canada call wheat. From memory. */
const WHEATS =
  /wheat|weizen|\bbl[ée](?![\p{L}])|froment|spelt|dinkel|[ée]peautre|durum|einkorn|emmer|kamut|triticale/iu;

/** One name of a list, and which of ours it holds. `kinds`: named with its kind, whatever that is. */
interface Member {
  readonly of: readonly Allergen[];
  readonly kinds?: true;
  /** Only those of its kinds. */
  readonly only?: RegExp;
}

type MembersOf<L extends LabelList> = Readonly<Record<keyof (typeof listNames)[L], Member>>;

const one = (allergen: Allergen): Member => ({ of: [allergen] });
const byKind = (...of: readonly Allergen[]): Member => ({ of, kinds: true });
const WHEAT: Member = { of: ['gluten'], only: WHEATS };

/**
 * How our fourteen stand in each list, in its own order.
 * EU: Regulation 1169/2011, Annex II. US: FALCPA 2004 and the FASTER Act 2021; nuts, fish and
 * crustaceans by their kind, of the grains with gluten wheat alone. Canada: Food and Drug Regulations,
 * priority allergens; rye, barley and oats stand beside them as gluten sources. All from memory; local
 * rules come first.
 */
export const LIST_MEMBERS: { readonly [L in LabelList]: MembersOf<L> } = {
  eu: {
    gluten: byKind('gluten'),
    crustaceans: one('crustaceans'),
    egg: one('egg'),
    fish: one('fish'),
    peanuts: one('peanuts'),
    soya: one('soya'),
    milk: one('milk'),
    nuts: byKind('nuts'),
    celery: one('celery'),
    mustard: one('mustard'),
    sesame: one('sesame'),
    sulphites: one('sulphites'),
    lupin: one('lupin'),
    molluscs: one('molluscs'),
  },
  us: {
    milk: one('milk'),
    egg: one('egg'),
    fish: byKind('fish'),
    shellfish: byKind('crustaceans'),
    nuts: byKind('nuts'),
    peanuts: one('peanuts'),
    wheat: WHEAT,
    soya: one('soya'),
    sesame: one('sesame'),
  },
  canada: {
    egg: one('egg'),
    milk: one('milk'),
    mustard: one('mustard'),
    peanuts: one('peanuts'),
    shellfish: byKind('crustaceans', 'molluscs'),
    fish: byKind('fish'),
    sesame: one('sesame'),
    soya: one('soya'),
    sulphites: one('sulphites'),
    nuts: byKind('nuts'),
    wheat: WHEAT,
  },
};

/** Names of a list by the keys of its members. */
const namesOf = (list: LabelList): Readonly<Record<string, string>> => listNames[list];

const membersOf = (list: LabelList): readonly (readonly [string, Member])[] =>
  Object.entries(LIST_MEMBERS[list]);

/** The kinds that a member takes of a list of texts, each once. */
const kindsOf = ({ of, only }: Member, texts: readonly string[]): readonly string[] => [
  ...new Set(
    of.flatMap((allergen) => kindsIn(texts, allergen)).filter((kind) => only?.test(kind) ?? true),
  ),
];

/** Grains with gluten that a list has no name of its own for: beside Canada's, gluten sources. */
const besides = (list: LabelList, texts: readonly string[]): readonly string[] =>
  list === 'canada'
    ? [...new Set(kindsIn(texts, 'gluten').filter((kind) => !WHEATS.test(kind)))]
    : [];

/**
 * What a list wants named of all that a bread brings, in the list's order: 'wheat', 'tree nuts
 * (hazelnut)'. What none of the names we know covers is named too: it came with a file, and somebody
 * meant it.
 *
 * @param texts as core/formula/allergens.ts keeps them
 * @example
 * namedBy('us', ['gluten (wheat)', 'gluten (rye)', 'tree nuts (hazelnut)']) // → ['tree nuts (hazelnut)', 'wheat']
 * namedBy('canada', ['gluten (wheat)', 'gluten (rye)']) // → ['wheat', 'rye']
 */
export function namedBy(list: LabelList, texts: readonly string[]): readonly string[] {
  const named = membersOf(list).flatMap(([key, member]) => {
    const stands = member.of.some((allergen) => standsIn(texts, allergen) !== 'no');
    const kinds = kindsOf(member, texts);
    if (!stands || (member.only && kinds.length === 0)) return [];
    const name = namesOf(list)[key]!;
    const others = kinds.map(showKind).filter((kind) => kind.toLowerCase() !== name.toLowerCase());
    const told = member.kinds || member.only ? others : [];
    return [told.length > 0 ? `${name} (${told.join(', ')})` : name];
  });
  return [
    ...named,
    ...besides(list, texts).map(showKind),
    ...new Set(ownTexts(texts).map(plainText)),
  ];
}

/** Of what a list wants the kind of: those that a list of texts names without it. */
export const kindWanted = (list: LabelList, texts: readonly string[]): readonly Allergen[] =>
  ALLERGENS.filter(
    (allergen) =>
      standsIn(texts, allergen) !== 'no' &&
      kindsIn(texts, allergen).length === 0 &&
      membersOf(list).some(([, { of, kinds }]) => kinds && of.includes(allergen)),
  );

/** The grains with gluten that a bread brings, each once: 'spelt wheat' is spelt. */
export const glutenIn = (texts: readonly string[]): readonly string[] => [
  ...new Set(kindsIn(texts, 'gluten').map((kind) => kind.replace(/^spelt wheat$/i, 'spelt'))),
];
