import type { Settings } from '../../../machines/ports.ts';

/** Clips that somebody here has spoken anew, each a file of its own; on this device and nowhere else. */
export interface Recordings {
  /** Of which clips there is one, held or kept. */
  recorded(): Promise<ReadonlySet<string>>;
  wave(id: string): Promise<ArrayBuffer | null>;
  /** Said in the clip's place from now on, while this page is open. */
  hold(id: string, wave: ArrayBuffer): void;
  /** Writes what is held. Rejects with a StoreError: then it is held still. */
  keep(id: string): Promise<void>;
  /** Lets go of what is held, else of what was kept. */
  drop(id: string): Promise<void>;
}

/**
 * Settings beside all others: a store of its own would be a new version of the database, which a page
 * with an older program could not open. The list is written last and cleared first: what it names is there.
 */
const LIST = 'recordings';
const nameOf = (id: string): string => `recording: ${id}`;

/** Of whatever realm it comes. */
const isFile = (found: unknown): found is ArrayBuffer =>
  Object.prototype.toString.call(found) === '[object ArrayBuffer]';

const made = new WeakMap<Settings, Recordings>();

/** The one set of recordings in these settings. */
export function recordingsIn(settings: Settings): Recordings {
  const known = made.get(settings);
  if (known) return known;
  const held = new Map<string, ArrayBuffer>();
  const kept = async (): Promise<readonly string[]> => {
    const list = await settings.get(LIST);
    return Array.isArray(list) ? list.filter((id) => typeof id === 'string') : [];
  };
  const recordings: Recordings = {
    async recorded() {
      // Where nothing can be read the shipped clips are there.
      return new Set([...(await kept().catch(() => [])), ...held.keys()]);
    },
    async wave(id) {
      const mine = held.get(id);
      if (mine) return mine.slice(0);
      const found = await settings.get(nameOf(id)).catch(() => null);
      return isFile(found) ? found : null;
    },
    hold: (id, wave) => void held.set(id, wave),
    async keep(id) {
      const wave = held.get(id);
      if (!wave) return;
      await settings.set(nameOf(id), wave);
      await settings.set(LIST, [...new Set([...(await kept()), id])]);
      if (held.get(id) === wave) held.delete(id);
    },
    async drop(id) {
      if (held.delete(id)) return;
      await settings.set(
        LIST,
        (await kept()).filter((other) => other !== id),
      );
      await settings.set(nameOf(id), null);
    },
  };
  made.set(settings, recordings);
  return recordings;
}
