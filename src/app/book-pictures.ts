import { createSignal } from 'solid-js';
import {
  StoreError,
  type KeptPicture,
  type NoPicture,
  type Pictures,
} from '../../machines/ports.ts';
import { PICTURE_LIMITS } from '../core/pictures/picture-limits.ts';
import type { BookPictures } from '../screens/book-pictures.ts';

/** Where pictures are shown from: addresses of this page's own. */
const ADDRESSES = {
  make: (picture: Blob): string => URL.createObjectURL(picture),
  drop: (address: string): void => URL.revokeObjectURL(address),
};

/**
 * The pictures of a house. Rejects where those on the disk cannot be read: none may be written over then.
 *
 * @param holds false in a page that only shows the kitchen: nothing is written there
 */
export async function openBookPictures(
  pictures: Pictures,
  holds: boolean,
  addresses = ADDRESSES,
): Promise<BookPictures> {
  const kept = new Map(await pictures.load());
  const show = ({ now }: KeptPicture): string | null =>
    now && addresses.make(new Blob([now], { type: 'image/jpeg' }));
  const first = [...kept].flatMap(([id, row]) => {
    const address = show(row);
    return address === null ? [] : [[id, address] as const];
  });
  const [shown, setShown] = createSignal<Readonly<Record<string, string>>>(
    Object.fromEntries(first),
  );
  const put = async (id: string, row: KeptPicture): Promise<NoPicture | null> => {
    if (!holds) return 'closed';
    try {
      await pictures.write(new Map([[id, row]]));
    } catch (error) {
      return error instanceof StoreError && error.trouble === 'full' ? 'full' : 'closed';
    }
    kept.set(id, row);
    const { [id]: old, ...others } = shown();
    const address = show(row);
    setShown(address === null ? others : { ...others, [id]: address });
    if (old !== undefined) addresses.drop(old);
    return null;
  };
  return {
    shown,
    canTakeBack: (id) => (shown(), kept.get(id)?.before !== undefined),
    async take(id, file) {
      // Nothing is read of what is too large to be opened.
      if (file.size > PICTURE_LIMITS.bytes) return 'large';
      const bytes = await file.arrayBuffer().catch(() => null);
      if (bytes === null) return 'broken';
      const small = await pictures.shrink(new Uint8Array(bytes));
      if (typeof small === 'string') return small;
      return put(id, { now: small, before: kept.get(id)?.now ?? null });
    },
    drop: (id) => put(id, { now: null, before: kept.get(id)?.now ?? null }),
    async takeBack(id) {
      const before = kept.get(id)?.before;
      return before === undefined ? null : put(id, { now: before });
    },
  };
}
