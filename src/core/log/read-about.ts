import { describe, Fields, readText, Refused, type Misread } from '../formula/read-fields.ts';
import { readUntold } from '../formula/read-untold.ts';
import type { Instant } from '../units.ts';
import type { About } from './about.ts';
import { KEEPSAKE_LIMITS } from './keepsake-limits.ts';
import { cleanNote, cleanTag } from './said-with.ts';

const MOST_ID = 200;
/** What a row may hold of tags at most before it is read; as many are kept as there is room for. */
const MOST_LISTED = 2_000;
/** The last instant there is, ms (ECMA-262, Time Values). */
const LAST_INSTANT = 8.64e15;

/** @throws Refused */
const no = (path: string, expected: string, value: unknown): never => {
  throw new Refused({ path, expected, got: describe(value) });
};

/** Not one of those that every object has: they are found where nobody put them. @throws Refused */
export const readId = (value: unknown, path: string): string => {
  const id = readText(value, path, MOST_ID);
  return id in {} ? no(path, 'an id', value) : id;
};

/** @throws Refused */
export const readInstant = (of: Fields, name: string): Instant =>
  of.number(name, -LAST_INSTANT, LAST_INSTANT);

const aText = (value: unknown, path: string): string =>
  typeof value === 'string' ? value : no(path, 'a text', value);

/** What is said of a bake as a row: of one that was erased only since when. */
export interface SaidRow {
  readonly about: About;
  /** Whatever was said and kept of it by then is nowhere any more, and no file brings it back. */
  readonly erased: Instant | null;
}

/**
 * What is said of a bake, from the disk or from a file, or what of it cannot be read; never throws. Texts
 * that are too long are cut. No reason repeats what stands in a text.
 */
export function readAbout(
  value: unknown,
):
  | { readonly said: SaidRow; readonly reason: null }
  | { readonly said: null; readonly reason: Misread } {
  const { read, reason } = readUntold('said', (): SaidRow => {
    const of = Fields.read(value, '');
    const tags = of.list('tags', 0, MOST_LISTED, aText).map(cleanTag);
    const ate = of.list('ate', 0, MOST_LISTED, readId);
    return {
      about: {
        tags: [...new Set(tags)].filter((tag) => tag !== '').slice(0, KEEPSAKE_LIMITS.tags),
        hidden: of.flag('hidden'),
        note: cleanNote(of.by('note', aText)),
        ate: [...new Set(ate)].slice(0, KEEPSAKE_LIMITS.ate),
        home: of.flag('home'),
        at: readInstant(of, 'at'),
      },
      erased: of.has('erased') && !of.isNull('erased') ? readInstant(of, 'erased') : null,
    };
  });
  return reason === null ? { said: read, reason } : { said: null, reason };
}

/** The row of what is said of a bake. */
export const saidRow = ({ about, erased }: SaidRow): unknown =>
  erased === null ? about : { ...about, erased };

/** All that is said of bakes, by the ids of their starts. What cannot be read is left out, and named. */
export function readSaid(rows: ReadonlyMap<unknown, unknown>): {
  readonly said: ReadonlyMap<string, SaidRow>;
  readonly misread: readonly Misread[];
} {
  const said = new Map<string, SaidRow>();
  const misread: Misread[] = [];
  for (const [key, row] of rows) {
    const start = readUntold('said.start', () => readId(key, ''));
    const { said: read, reason } = readAbout(row);
    if (start.reason !== null) misread.push(start.reason);
    else if (reason !== null) misread.push(reason);
    else said.set(start.read, read);
  }
  return { said, misread };
}
