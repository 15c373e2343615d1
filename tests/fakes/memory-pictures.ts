import {
  StoreError,
  type Jpeg,
  type KeptPicture,
  type NoPicture,
  type Pictures,
  type StoreTrouble,
} from '../../machines/ports.ts';

export interface MemoryPictures extends Pictures {
  readonly rows: Map<string, KeptPicture>;
  /** Every load and write fails with this from now on; null ends it. */
  fail(trouble: StoreTrouble | null): void;
}

/** A JPEG's first bytes and these. */
export const jpeg = (...bytes: readonly number[]): Jpeg =>
  Uint8Array.from([0xff, 0xd8, 0xff, ...bytes]);

/** Pictures in memory; made small, a file is its own bytes unless told why it is none. */
export function makeMemoryPictures(
  shrink: (file: Jpeg) => Jpeg | NoPicture = (file) => file,
): MemoryPictures {
  const rows = new Map<string, KeptPicture>();
  let trouble: StoreTrouble | null = null;
  const check = () => {
    if (trouble !== null) throw new StoreError(trouble);
  };
  return {
    rows,
    load: async () => {
      check();
      return new Map(rows);
    },
    write: async (next) => {
      check();
      for (const [id, row] of next) {
        if (row === null) rows.delete(id);
        else rows.set(id, row);
      }
    },
    shrink: async (file) => shrink(file),
    fail: (next) => void (trouble = next),
  };
}
