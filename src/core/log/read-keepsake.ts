import { describe, Fields, Refused, type Misread } from '../formula/read-fields.ts';
import { readUntold } from '../formula/read-untold.ts';
import type { Keepsake } from './about.ts';
import { readKeepsakeKey } from './keepsake-key.ts';
import { KEEPSAKE_LIMITS } from './keepsake-limits.ts';
import { readId, readInstant } from './read-about.ts';

export const KEEPSAKE_KINDS = ['photo', 'voice'] as const;

/** What stays of a photo or a voice that was erased: that it was. */
export const GONE_ROW = { gone: true } as const;

const VOICE_TYPE = /^audio\/[a-z0-9.+-]{1,40}(;\s?codecs=[\w.",+-]{1,60})?$/i;
/** @throws Refused */
const no = (path: string, expected: string, got: string): never => {
  throw new Refused({ path, expected, got });
};

/**
 * What is recorded in, as a browser names it.
 *
 * @example
 * isVoiceType('audio/webm;codecs=opus') // → true
 */
export const isVoiceType = (type: string): boolean => VOICE_TYPE.test(type);

/** Whether this may be a photo of the kind that is kept: a JPEG begins with the bytes FF D8 FF. */
const isJpeg = (bytes: Uint8Array): boolean =>
  bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;

/** Of whatever realm it comes. @throws Refused */
const readBytes =
  (kind: Keepsake['kind']) =>
  (value: unknown, path: string): Keepsake['bytes'] => {
    if (Object.prototype.toString.call(value) !== '[object Uint8Array]')
      return no(path, 'bytes', describe(value));
    const bytes = value as Keepsake['bytes'];
    const most = kind === 'photo' ? KEEPSAKE_LIMITS.photoBytes : KEEPSAKE_LIMITS.voiceBytes;
    if (bytes.length < 1 || bytes.length > most)
      return no(path, `1 to ${most} bytes`, `${bytes.length}`);
    return kind === 'voice' || isJpeg(bytes) ? bytes : no(path, 'a JPEG', 'other bytes');
  };

/** All but its bytes, which a disk and a file each have in their own way. @throws Refused */
export function readKeepsakeHead(of: Fields): Omit<Keepsake, 'bytes'> {
  const kind = of.oneOf('kind', KEEPSAKE_KINDS);
  const id = of.by('id', readId);
  if (id.includes('/')) of.refuse('id', 'an id without a stroke', 'one with it');
  const type = of.text('type', 120);
  if (kind === 'photo' ? type !== 'image/jpeg' : !isVoiceType(type))
    of.refuse('type', kind === 'photo' ? 'image/jpeg' : 'a type of sound', 'another');
  return { id, start: of.by('start', readId), kind, at: readInstant(of, 'at'), type };
}

/** A row of what is kept: a photo or a voice, or that there was one. */
export type KeptRow =
  | { readonly kept: Keepsake; readonly gone: false; readonly reason: null }
  | { readonly kept: null; readonly gone: boolean; readonly reason: Misread | null };

/** What lies under a key, or what of it cannot be read; never throws. */
export function readKeepsake(key: unknown, row: unknown): KeptRow {
  const { read, reason } = readUntold('kept', (): Keepsake | null => {
    const place = readKeepsakeKey(key);
    if (place === null) return no('key', 'a start, a stroke and an id', describe(key));
    const of = Fields.read(row, '');
    if (of.has('gone')) return null;
    const head = readKeepsakeHead(of);
    if (head.start !== place.start || head.id !== place.id)
      of.refuse('id', 'the key it lies under', 'another');
    return { ...head, bytes: of.by('bytes', readBytes(head.kind)) };
  });
  if (reason !== null) return { kept: null, gone: false, reason };
  return read === null
    ? { kept: null, gone: true, reason }
    : { kept: read, gone: false, reason: null };
}

/** All that is kept, the oldest first, and the keys of what was erased. What cannot be read is left out, and named. */
export function readKept(rows: ReadonlyMap<unknown, unknown>): {
  readonly kept: readonly Keepsake[];
  readonly gone: ReadonlySet<string>;
  readonly misread: readonly Misread[];
} {
  const kept: Keepsake[] = [];
  const gone = new Set<string>();
  const misread: Misread[] = [];
  for (const [key, row] of rows) {
    const read = readKeepsake(key, row);
    if (read.kept !== null) kept.push(read.kept);
    else if (read.reason !== null) misread.push(read.reason);
    else gone.add(String(key));
  }
  return { kept: kept.toSorted((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1)), gone, misread };
}
