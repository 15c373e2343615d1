import { notes } from '../speech/words/note.ts';
import { showBread } from '../speech/show-bread.ts';
import type { About } from './about.ts';
import type { ListedBake } from './bake-list.ts';
import type { TurnedOut } from './turned-out.ts';

/** What is looked for; what is left out leaves all in. */
export interface BakeQuery {
  /** Words or parts of them, in any order; all must be there: in the name as it is kept or shown, a note or a tag. */
  readonly text?: string;
  /** "2031-05". */
  readonly month?: string;
  /** A formula's id. */
  readonly formula?: string;
  readonly tag?: string;
  readonly turned?: TurnedOut;
  /** Those that were hidden too. */
  readonly hidden?: boolean;
}

/** What a search knows beside the list. */
export interface FindBeside {
  /** What was said of bakes, by the ids of their starts. */
  readonly abouts: Readonly<Record<string, About>>;
  /** As the baker reads it. */
  readonly tagName: (tag: string) => string;
  /** The month a bake began in, "2031-05". */
  readonly monthOf: (bake: ListedBake) => string;
}

/** A text without what nobody types: accents, capitals. */
const plainOf = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase();

/** The note of its last press, as the baker reads it. */
export const notedOf = ({ note }: ListedBake): string | null =>
  notes.find(({ value }) => value === note)?.label ?? note;

/** Lines and what is said of them do not change, they are made anew: each is made plain once. */
const plains = new WeakMap<object, string>();
const onceOf = (of: object, make: () => string): string => {
  const known = plains.get(of);
  if (known !== undefined) return known;
  const plain = plainOf(make());
  plains.set(of, plain);
  return plain;
};

const foundIn = (
  bake: ListedBake,
  about: About | undefined,
  word: string,
  tagName: FindBeside['tagName'],
): boolean =>
  onceOf(bake, () => [bake.name, showBread(bake.name), notedOf(bake)].join('\n')).includes(word) ||
  (about !== undefined &&
    onceOf(about, () => [about.note, ...about.tags.map(tagName)].join('\n')).includes(word));

/**
 * Those of a list that a query means, in the list's order; the list itself where that is all of it.
 *
 * @example
 * findBakes([], { text: 'cherry' }, { abouts: {}, tagName: (tag) => tag, monthOf: () => '' }) // → []
 */
export function findBakes(
  bakes: readonly ListedBake[],
  { text = '', month, formula, tag, turned, hidden = false }: BakeQuery,
  { abouts, tagName, monthOf }: FindBeside,
): readonly ListedBake[] {
  const words = plainOf(text).split(/\s+/).filter(Boolean);
  const found = bakes.filter((one) => {
    const about = Object.hasOwn(abouts, one.start) ? abouts[one.start] : undefined;
    return (
      (hidden || about?.hidden !== true) &&
      (formula === undefined || one.formula === formula) &&
      (turned === undefined || one.turned === turned) &&
      (tag === undefined || about?.tags.includes(tag) === true) &&
      (month === undefined || monthOf(one) === month) &&
      words.every((word) => foundIn(one, about, word, tagName))
    );
  });
  return found.length === bakes.length ? bakes : found;
}

/** What one may choose to find bakes by, and how many of a list it would find. */
export interface Choice<T extends string = string> {
  readonly value: T;
  readonly count: number;
}

/** Each value that bakes of a list have, in the order it comes in the list: the latest first. */
export function choicesOf<T extends string>(
  bakes: readonly ListedBake[],
  valuesOf: (bake: ListedBake) => readonly T[],
): readonly Choice<T>[] {
  const counts = new Map<T, number>();
  for (const bake of bakes)
    for (const value of valuesOf(bake)) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].map(([value, count]) => ({ value, count }));
}
