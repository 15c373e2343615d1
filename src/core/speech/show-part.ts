import { inEnglish, tongue, twinned } from './tongue.ts';
import { fillingNames } from './words/book.ts';
import { flourNames } from './words/book-parts.ts';
import { fillingKinds } from './words/filling-kinds.ts';
import { partNames } from './words/parts.ts';
import { weighNames } from './words/weigh.ts';

type Names = Readonly<Record<string, string>>;
type Found = readonly [Names, string];

/** Those of the breads that come with the program, and those that the Book offers. */
const LISTS: readonly Names[] = [partNames, flourNames, fillingNames, fillingKinds];

const listed = (): ReadonlyMap<string, Found> => {
  const all = LISTS.flatMap((names) => Object.keys(names).map((key): Found => [names, key]));
  const salt: Found = [weighNames, 'salt'];
  return inEnglish(
    () => new Map([...all, salt].map((one): [string, Found] => [one[0][one[1]]!, one])),
  );
};
/** By their English names: made when the first is asked for. */
let byName: ReadonlyMap<string, Found> | null = null;

const small = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
const large = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

function shown(name: string): string {
  if (tongue() === 'en') return name;
  byName ??= listed();
  const found = byName.get(name) ?? byName.get(small(name));
  if (found === undefined) return name;
  const [names, key] = found;
  return small(name) === name ? names[key]! : large(names[key]!);
}

/**
 * A flour's or a filling's name in the tongue that stands: every page, paper, label and sentence names it
 * by this. Formulas, facts, files and the cupboard keep the English name of those that come with the
 * program or that the Book offers, and allergens are looked for in it; a baker's own is called what its
 * baker calls it.
 *
 * @example showPart('dried cherries') // in German: 'getrocknete Kirschen'
 */
export const showPart = (name: string): string =>
  tongue() === 'en' ? name : twinned(() => shown(name));

/** Several of them, as one list. */
export const showParts = (names: readonly string[]): string => names.map(showPart).join(', ');

/** The same without the marks where a long word may be parted: to be written into a field, or sought. */
export const plainPart = (name: string): string => showPart(name).replaceAll('\u00ad', '');
