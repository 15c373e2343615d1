import { unzipSync, zipSync, type Zippable } from 'fflate';
import type { Misread } from '../../core/formula/read-fields.ts';
import { inflateWithin } from './inflate-within.ts';

/** Most bytes of a sheet file, of one part of it unpacked, of all its parts, and most parts. Judgement. */
const MOST = { file: 2_000_000, part: 2_000_000, all: 4_000_000, parts: 60 } as const;

type Safe =
  | { readonly zip: Uint8Array<ArrayBuffer>; readonly reason?: never }
  | { readonly zip: null; readonly reason: Misread };

const refuse = (path: string, expected: string, got: string): Safe => ({
  zip: null,
  reason: { path, expected, got },
});

interface Part {
  readonly name: string;
  readonly method: number;
  readonly at: number;
  readonly packed: number;
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;

/** The parts that a zip's own list names, read without unpacking anything; null: no such list. */
function partsOf(data: Uint8Array): readonly Part[] | null {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const letters = new TextDecoder();
  let end = data.length - 22;
  const lowest = Math.max(0, end - 65_536);
  while (end >= lowest && view.getUint32(end, true) !== END) end -= 1;
  if (end < lowest) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const parts: Part[] = [];
  for (let i = 0; i < count && i <= MOST.parts; i++) {
    if (at + 46 > data.length || view.getUint32(at, true) !== ENTRY) return null;
    const nameSize = view.getUint16(at + 28, true);
    parts.push({
      name: letters.decode(data.subarray(at + 46, at + 46 + nameSize)),
      method: view.getUint16(at + 10, true),
      packed: view.getUint32(at + 20, true),
      at: view.getUint32(at + 42, true),
    });
    at += 46 + nameSize + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return parts;
}

/** Where a part's packed bytes lie; null: nowhere. */
function bytesOf(data: Uint8Array, { at, packed }: Part): Uint8Array | null {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  if (at + 30 > data.length || view.getUint32(at, true) !== LOCAL) return null;
  const from = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  return from + packed > data.length ? null : data.subarray(from, from + packed);
}

/**
 * A zip of text parts packed anew, each unpacked within bounds first: whatever opens the copy meets no
 * part larger than it may be, and nothing that has to be unpacked. Null with the part that is too large
 * or broken. Never throws.
 */
export function safeZip(data: Uint8Array): Safe {
  if (data.length > MOST.file)
    return refuse('the file', `at most ${MOST.file} bytes`, `${data.length}`);
  const parts = partsOf(data);
  if (parts === null) return refuse('the file', 'an xlsx file', 'another');
  if (parts.length > MOST.parts) return refuse('the file', `at most ${MOST.parts} parts`, 'more');
  const safe: Zippable = {};
  let left: number = MOST.all;
  for (const part of parts) {
    const { name, method } = part;
    if (!/\.(xml|rels)$/.test(name)) continue;
    const packed = bytesOf(data, part);
    if (packed === null) return refuse(name, 'a whole part', 'a broken one');
    if (method !== 0 && method !== 8) return refuse(name, 'a deflated part', `method ${method}`);
    const most = Math.min(left, MOST.part);
    const text = method === 0 ? packed : inflateWithin(packed, most);
    if (text === null || text.length > most) {
      return refuse(name, `a whole part of at most ${MOST.part} bytes`, 'a larger or broken one');
    }
    left -= text.length;
    safe[name] = [text, { level: 0 }];
  }
  return { zip: zipSync(safe) };
}

/** The text parts of a zip that safeZip made. */
export const partTexts = (zip: Uint8Array): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(unzipSync(zip)).map(([name, part]) => [name, new TextDecoder().decode(part)]),
  );
