import { describe, type Misread } from '../formula/read-fields.ts';
import { CIRCLE, type Circle, type CircleWays } from './circle.ts';
import { byName, ownName } from './neighbours.ts';
import { rowOf } from './read-circle.ts';
import { readThing, readWays } from './read-row.ts';
import { changed, LISTS, put, type Change, type ListName, type Put } from './row.ts';

/** A thing of the circle, or how it is run, as a line of a saved file. */
export interface SavedRow {
  readonly circle: ListName | 'ways';
  readonly row: unknown;
}

/** What somebody is called in a file without names. */
export const markOf = (n: number): string => `N ${n}`;

/** The circle without what tells who somebody is: marks for names, no lists, none of the maker's own lines. */
export const unnamed = (circle: Circle): Circle => ({
  ...circle,
  neighbours: byName(circle.neighbours).map(({ id }, n) => ({
    id,
    name: markOf(n + 1),
    watch: [],
  })),
  ways: { ...circle.ways, lines: [] },
});

const isSaid = (ways: CircleWays): boolean =>
  JSON.stringify(ways) !== JSON.stringify({ ...ways, ...CIRCLE.ways });

/** A circle as lines of a saved file; none of one that nobody has begun. `names`: with those who have bread. */
export function savedCircle(circle: Circle, names: boolean): readonly SavedRow[] {
  const told = names ? circle : unnamed(circle);
  return [
    ...LISTS.flatMap((list) => told[list].map((row): SavedRow => ({ circle: list, row }))),
    ...(isSaid(told.ways) ? [{ circle: 'ways', row: told.ways } as const] : []),
  ];
}

/** What came, of a text only that it is one: it may be a name. */
export const kindOf = (value: unknown): string =>
  typeof value === 'string' ? 'a text' : describe(value);

const isRow = (value: unknown): value is SavedRow =>
  typeof value === 'object' && value !== null && 'circle' in value && 'row' in value;

/**
 * A saved file's lines of a circle, all of them or nothing: the first that is none, that cannot be read or
 * that stands there twice is named by its place, counted from 0, without what stands in it. Never throws.
 */
export function readSavedCircle(
  lines: readonly unknown[],
):
  | { readonly saved: Change; readonly reason: null }
  | { readonly saved: null; readonly reason: Misread & { readonly at: number } } {
  const puts: Put[] = [];
  const had = new Set<string>();
  let ways: CircleWays | undefined;
  const no = (at: number, path: string, expected: string, got: string) => ({
    saved: null,
    reason: { path, expected, got, at },
  });
  for (const [at, line] of lines.entries()) {
    if (!isRow(line)) return no(at, 'circle', 'a row of the circle', kindOf(line));
    const list = LISTS.find((one) => one === line.circle);
    let key: string = 'ways';
    if (list) {
      const { thing, reason } = readThing(list, line.row);
      if (reason !== null) return no(at, reason.path, reason.expected, reason.got);
      key = rowOf(list, thing.id);
      puts.push(put(list, thing));
    } else if (line.circle === 'ways') {
      const { ways: read, misread } = readWays(line.row);
      if (misread[0]) return no(at, misread[0].path, misread[0].expected, misread[0].got);
      ways = read;
    } else return no(at, 'circle', `one of ${LISTS.join(', ')}, ways`, kindOf(line.circle));
    if (had.has(key)) return no(at, 'circle', 'each row once', 'one twice');
    had.add(key);
  }
  return { saved: { puts, ...(ways ? { ways } : {}) }, reason: null };
}

/**
 * What a saved circle changes of the one that is here: nothing that is here is written over, nobody who was
 * erased here comes back, and a name that somebody has here is told apart.
 */
export function broughtIn(here: Circle, saved: Change, gone: ReadonlySet<string>): Change {
  let now = here;
  const puts = saved.puts.flatMap((one): readonly Put[] => {
    const old: readonly { readonly id: string }[] = here[one.list];
    if (one.thing === null || old.some(({ id }) => id === one.id)) return [];
    if (one.list !== 'neighbours') return [one];
    if (gone.has(one.id)) return [];
    const own = put('neighbours', { ...one.thing, name: ownName(now, one.thing.name) });
    now = changed(now, { puts: [own] });
    return [own];
  });
  const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
  const untouched = (Object.keys(CIRCLE.ways) as readonly (keyof CircleWays)[]).filter((name) =>
    same(here.ways[name], CIRCLE.ways[name]),
  );
  const said = untouched.flatMap((name) => {
    const its = saved.ways?.[name];
    return its === undefined || same(its, here.ways[name]) ? [] : [[name, its] as const];
  });
  return { puts, ...(said.length > 0 ? { ways: Object.fromEntries(said) } : {}) };
}
