import { createSignal } from 'solid-js';
import { StoreError, type KeepsakeRows } from '../../machines/ports.ts';
import type { About, Keepsake } from '../core/log/about.ts';
import { keepsakeKey, readKeepsakeKey } from '../core/log/keepsake-key.ts';
import { readSaid, saidRow, type SaidRow } from '../core/log/read-about.ts';
import { GONE_ROW, readKeepsake, readKept } from '../core/log/read-keepsake.ts';
import { erasedSaid, saidWith } from '../core/log/said-with.ts';
import { PICTURE_LIMITS } from '../core/pictures/picture-limits.ts';
import type { Misread } from '../core/formula/read-fields.ts';
import { keepsakesTold } from '../core/speech/words/keepsakes.ts';
import { fill } from '../core/speech/fill.ts';
import type { NotWritten } from '../screens/house-circle.ts';
import type { HouseLog } from '../screens/house-log.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

const NONE: ReadonlyMap<string, unknown> = new Map();

/**
 * What is said and kept of bakes. Rejects with a StoreError where it cannot be read: nothing may be written
 * over then. Rows that make no sense are left out and told, without what stands in them.
 */
export async function openKeepsakes(
  rows: KeepsakeRows,
  {
    pictures,
    spokenNotes,
    holds,
    clock,
    ids,
  }: Pick<World, 'pictures' | 'spokenNotes' | 'holds' | 'clock' | 'ids'>,
  tell: House['tell'],
): Promise<Omit<HouseLog, 'others'>> {
  const tellOf = ([first, ...others]: readonly Misread[]): void => {
    if (!first) return;
    const text = fill(keepsakesTold.misread, { count: others.length + 1, ...first });
    tell({ id: 'keepsakes', text, action: null });
  };
  const read = readSaid(await rows.load());
  tellOf(read.misread);
  const said = new Map(read.said);
  const all = (): Readonly<Record<string, About>> =>
    Object.fromEntries([...said].map(([start, { about }]) => [start, about]));
  const [abouts, setAbouts] = createSignal(all());

  // One after the other: each is a change of what the one before it left.
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(deed: () => Promise<T>): Promise<T> => {
    const next = last.then(deed);
    last = next.catch(() => undefined);
    return next;
  };
  const put = async (
    its: ReadonlyMap<string, SaidRow>,
    kept: ReadonlyMap<string, unknown>,
  ): Promise<NotWritten | null> => {
    if (!holds) return 'closed';
    try {
      await rows.write(new Map([...its].map(([start, row]) => [start, saidRow(row)])), kept);
    } catch (error) {
      return error instanceof StoreError && error.trouble === 'full' ? 'full' : 'closed';
    }
    if (its.size > 0) {
      for (const [start, row] of its) said.set(start, row);
      setAbouts(all());
    }
    return null;
  };
  const keep = (
    start: string,
    its: Pick<Keepsake, 'kind' | 'type' | 'bytes'>,
  ): Promise<NotWritten | null> => {
    const at = clock.now();
    // The disk gives rows back by their keys: in the order in which they were made.
    const id = `${at.toString(36).padStart(9, '0')}-${ids.next()}`;
    const key = keepsakeKey(start, id);
    const row: Keepsake = { id, start, at, ...its };
    // What could not be read again is not kept: nobody would find it.
    if (readKeepsake(key, row).kept === null) return Promise.resolve('closed');
    return put(new Map(), new Map([[key, row]]));
  };
  return {
    abouts,
    say: (start, change) =>
      inTurn(() => {
        const was = said.get(start);
        const about = saidWith(was?.about ?? null, change, clock.now());
        return put(new Map([[start, { about, erased: was?.erased ?? null }]]), NONE);
      }),
    async keepsakes(start) {
      const { kept, misread } = readKept(await rows.loadKept(start));
      tellOf(misread);
      return kept.filter((one) => one.start === start);
    },
    async takePhoto(start, file) {
      // Nothing is read of what is too large to be opened.
      if (file.size > PICTURE_LIMITS.bytes) return 'large';
      const bytes = await file.arrayBuffer().catch(() => null);
      if (bytes === null) return 'broken';
      const its = await pictures().catch(() => null);
      if (its === null) return 'closed';
      const small = await its.shrink(new Uint8Array(bytes));
      if (typeof small === 'string') return small;
      return inTurn(() => keep(start, { kind: 'photo', type: 'image/jpeg', bytes: small }));
    },
    voices: () => spokenNotes(),
    takeVoice: (start, { type, bytes }) =>
      inTurn(() => keep(start, { kind: 'voice', type, bytes })),
    erase: (start, id) =>
      inTurn(() => put(new Map(), new Map([[keepsakeKey(start, id), GONE_ROW]]))),
    eraseAll: (start) =>
      inTurn(async () => {
        const found = await rows.loadKept(start).catch(() => null);
        if (found === null) return 'closed';
        const its = [...found.keys()].filter((key) => readKeepsakeKey(key)?.start === start);
        const now = clock.now();
        const was = said.get(start)?.about ?? null;
        return put(
          new Map([[start, { about: erasedSaid(was, now), erased: now }]]),
          new Map(its.map((key) => [String(key), GONE_ROW])),
        );
      }),
  };
}
