import type { Instant } from '../units.ts';
import type { About, Keepsake } from './about.ts';
import { keepsakeKey } from './keepsake-key.ts';
import type { SaidRow } from './read-about.ts';
import { erasedSaid, saidWith } from './said-with.ts';
import type { SavedKeepsake, SavedKeepsakes } from './saved-keepsakes.ts';

/** What this tablet has. */
export interface KeepsakesHere {
  readonly said: ReadonlyMap<string, SaidRow>;
  readonly kept: readonly Pick<Keepsake, 'start' | 'id' | 'at'>[];
  readonly gone: ReadonlySet<string>;
}

/** What a file changes of that. */
export interface BroughtKeepsakes {
  readonly said: ReadonlyMap<string, SaidRow>;
  readonly puts: readonly SavedKeepsake[];
  /** Keys of what is to be erased here, or never to come. */
  readonly gone: ReadonlySet<string>;
}

const later = (a: Instant | null, b: Instant | null): Instant | null =>
  a === null || b === null ? (a ?? b) : Math.max(a, b);

/** What was said by the time all of it was erased elsewhere is said no more. */
const after = (row: SaidRow, erased: Instant | null): About =>
  erased !== null && row.erased !== erased && row.about.at <= erased
    ? erasedSaid(row.about, row.about.at)
    : saidWith(row.about, {}, row.about.at);

const same = (a: SaidRow, b: SaidRow | undefined): boolean =>
  b !== undefined &&
  JSON.stringify([after(a, null), a.erased]) === JSON.stringify([after(b, null), b.erased]);

function joined(here: SaidRow | undefined, its: SaidRow): SaidRow {
  const erased = later(here?.erased ?? null, its.erased);
  const theirs = after(its, erased);
  if (!here) return { about: theirs, erased };
  const ours = after(here, erased);
  const saysWho = ours.ate.length > 0 || ours.home;
  return {
    about: saidWith(
      ours,
      {
        tags: [...ours.tags, ...theirs.tags],
        note: ours.note === '' ? theirs.note : ours.note,
        ...(saysWho ? {} : { ate: theirs.ate, home: theirs.home }),
      },
      ours.at,
    ),
    erased,
  };
}

/**
 * What a file changes here: what is said here stays, tags are joined, a blank is filled. What was erased, here
 * or where the file is from, is erased in both, and comes back out of neither; so is whatever was kept of a
 * bake by the instant all of it was erased, as far as the clocks of two tablets agree.
 */
export function broughtKeepsakes(here: KeepsakesHere, file: SavedKeepsakes): BroughtKeepsakes {
  const said = new Map<string, SaidRow>();
  for (const [start, its] of file.said) {
    const was = here.said.get(start);
    const next = joined(was, its);
    if (!same(next, was)) said.set(start, next);
  }
  const isErased = ({ start, at }: Pick<Keepsake, 'start' | 'at'>): boolean => {
    const since = (said.get(start) ?? here.said.get(start))?.erased ?? null;
    return since !== null && at <= since;
  };
  const keyOf = ({ start, id }: Pick<Keepsake, 'start' | 'id'>): string => keepsakeKey(start, id);
  const gone = new Set([...file.gone].filter((key) => !here.gone.has(key)));
  for (const one of here.kept) if (isErased(one)) gone.add(keyOf(one));
  const known = new Set([...here.kept.map(keyOf), ...here.gone, ...gone]);
  return {
    said,
    puts: file.kept.filter((one) => !known.has(keyOf(one)) && !isErased(one)),
    gone,
  };
}
