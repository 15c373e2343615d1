import type { KeepsakeRows } from '../../machines/ports.ts';
import { fromBase64, toBase64 } from '../adapters/base64.ts';
import { broughtKeepsakes, type KeepsakesHere } from '../core/log/brought-keepsakes.ts';
import { keepsakeKey } from '../core/log/keepsake-key.ts';
import { readSaid, saidRow } from '../core/log/read-about.ts';
import { GONE_ROW, readKept } from '../core/log/read-keepsake.ts';
import {
  savedKeepsakes,
  type KeepsakeLine,
  type KeepsakesOut,
  type SavedKeepsakes,
} from '../core/log/saved-keepsakes.ts';

/** What is said and kept of bakes, as lines of a saved file. Rejects with a StoreError. */
export async function keepsakeLines(
  rows: KeepsakeRows,
  out: KeepsakesOut,
): Promise<readonly KeepsakeLine[]> {
  const { said } = readSaid(await rows.load());
  const { kept, gone } = readKept(await rows.loadKept());
  const wanted = kept.filter(({ kind }) => (kind === 'photo' ? out.photos : out.voices));
  const saved = wanted.map(({ bytes, ...head }) => ({ ...head, data: toBase64(bytes) }));
  return savedKeepsakes({ said, kept: saved, gone }, out);
}

/**
 * Writes what a file brings of it, all or nothing; resolves with what undoes it. A row that cannot be read
 * here is not written over. Rejects with a StoreError.
 */
export async function takeKeepsakes(
  rows: KeepsakeRows,
  file: SavedKeepsakes,
): Promise<() => Promise<void>> {
  const [said, kept] = [await rows.load(), await rows.loadKept()];
  const here: KeepsakesHere = { said: readSaid(said).said, ...readKept(kept) };
  const brought = broughtKeepsakes(here, file);
  const saidRows = new Map(
    [...brought.said].flatMap(([start, row]) =>
      said.has(start) && !here.said.has(start) ? [] : [[start, saidRow(row)] as const],
    ),
  );
  const keptRows = new Map<string, unknown>([...brought.gone].map((key) => [key, GONE_ROW]));
  for (const { data, ...head } of brought.puts) {
    const key = keepsakeKey(head.start, head.id);
    if (!kept.has(key)) keptRows.set(key, { ...head, bytes: fromBase64(data) });
  }
  await rows.write(saidRows, keptRows);
  const were = (now: ReadonlyMap<string, unknown>, was: ReadonlyMap<unknown, unknown>) =>
    new Map([...now.keys()].map((key) => [key, was.get(key) ?? null]));
  return () => rows.write(were(saidRows, said), were(keptRows, kept));
}
