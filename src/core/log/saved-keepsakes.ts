import { Fields, Refused, type Misread } from '../formula/read-fields.ts';
import { readUntold } from '../formula/read-untold.ts';
import type { Keepsake } from './about.ts';
import { keepsakeKey } from './keepsake-key.ts';
import { KEEPSAKE_LIMITS } from './keepsake-limits.ts';
import { readAbout, readId, saidRow, type SaidRow } from './read-about.ts';
import { readKeepsakeHead } from './read-keepsake.ts';
import { isTag } from './tags.ts';

/** A photo or a voice as it stands in a file: its bytes in base64 (RFC 4648 §4). */
export type SavedKeepsake = Omit<Keepsake, 'bytes'> & { readonly data: string };

/** What is said of a bake, a photo or a voice, or that one was erased, each as a line of a saved file. */
export type KeepsakeLine =
  | { readonly about: string; readonly said: unknown }
  | { readonly keepsake: SavedKeepsake }
  | { readonly erased: { readonly start: string; readonly id: string } };

/** What a file has of it. */
export interface SavedKeepsakes {
  readonly said: ReadonlyMap<string, SaidRow>;
  readonly kept: readonly SavedKeepsake[];
  /** Keys of photos and voices that were erased. */
  readonly gone: ReadonlySet<string>;
}

export const holdsNone = ({ said, kept, gone }: SavedKeepsakes): boolean =>
  said.size + kept.length + gone.size === 0;

/** What of it goes out this once. Voices are in no file unless somebody says so. */
export interface KeepsakesOut {
  /** Notes, and tags in the baker's own words: either may hold a name. */
  readonly notes: boolean;
  readonly photos: boolean;
  readonly voices: boolean;
}

const BASE64 = /^[A-Za-z0-9+/]*={0,2}$/;
const mostLetters = (kind: Keepsake['kind']): number =>
  Math.ceil((kind === 'photo' ? KEEPSAKE_LIMITS.photoBytes : KEEPSAKE_LIMITS.voiceBytes) / 3) * 4;

const withoutNotes = ({ about, erased }: SaidRow): SaidRow => ({
  about: { ...about, note: '', tags: about.tags.filter(isTag) },
  erased,
});

/** As lines of a saved file; that something was erased always goes with it, or the file would bring it back. */
export function savedKeepsakes(
  { said, kept, gone }: SavedKeepsakes,
  { notes, photos, voices }: KeepsakesOut,
): readonly KeepsakeLine[] {
  return [
    ...[...said].map(([about, row]) => ({ about, said: saidRow(notes ? row : withoutNotes(row)) })),
    ...kept
      .filter(({ kind }) => (kind === 'photo' ? photos : voices))
      .map((keepsake) => ({ keepsake })),
    ...[...gone].map((key) => {
      const at = key.lastIndexOf('/');
      return { erased: { start: key.slice(0, at), id: key.slice(at + 1) } };
    }),
  ];
}

/** Whether a line of a saved file wants to be one of these. */
export const isKeepsakeLine = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' &&
  value !== null &&
  ('about' in value || 'keepsake' in value || 'erased' in value);

/** @throws Refused */
function readSavedKeepsake(of: Fields): SavedKeepsake {
  const head = readKeepsakeHead(of);
  const most = mostLetters(head.kind);
  const data = of.by('data', (value, path): string => {
    if (typeof value !== 'string' || value === '' || value.length % 4 !== 0 || !BASE64.test(value))
      throw new Refused({ path, expected: 'base64', got: 'something else' });
    if (value.length > most)
      throw new Refused({ path, expected: `at most ${most} letters`, got: `${value.length}` });
    // A JPEG begins with the bytes FF D8 FF.
    if (head.kind === 'photo' && !value.startsWith('/9j/'))
      throw new Refused({ path, expected: 'a JPEG', got: 'other bytes' });
    return value;
  });
  return { ...head, data };
}

/**
 * A saved file's lines of it, all of them or nothing: the first that is none, that cannot be read or that
 * stands there twice is named by its place, counted from 0, without what stands in it. Never throws.
 */
export function readSavedKeepsakes(
  lines: readonly unknown[],
):
  | { readonly saved: SavedKeepsakes; readonly reason: null }
  | { readonly saved: null; readonly reason: Misread & { readonly at: number } } {
  const said = new Map<string, SaidRow>();
  const kept = new Map<string, SavedKeepsake>();
  const gone = new Set<string>();
  const one = (line: unknown): void => {
    const of = Fields.read(line, '');
    if (of.has('about')) {
      const start = of.by('about', readId);
      const { said: row, reason } = of.by('said', readAbout);
      if (reason !== null) throw new Refused(reason);
      if (said.has(start)) of.refuse('about', 'each bake once', 'one twice');
      said.set(start, row);
    } else if (of.has('keepsake')) {
      const its = readSavedKeepsake(of.inner('keepsake'));
      const key = keepsakeKey(its.start, its.id);
      if (kept.has(key)) of.refuse('keepsake', 'each once', 'one twice');
      kept.set(key, its);
    } else {
      const its = of.inner('erased');
      const [start, id] = [its.by('start', readId), its.by('id', readId)];
      if (id.includes('/')) its.refuse('id', 'an id without a stroke', 'one with it');
      gone.add(keepsakeKey(start, id));
    }
  };
  for (const [at, line] of lines.entries()) {
    const { reason } = readUntold('keepsakes', () => one(line));
    if (reason !== null) return { saved: null, reason: { ...reason, at } };
  }
  return { saved: { said, kept: [...kept.values()], gone }, reason: null };
}
