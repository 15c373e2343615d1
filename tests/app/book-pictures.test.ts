import { expect, it } from 'vitest';
import { openBookPictures } from '../../src/app/book-pictures.ts';
import { jpeg, makeMemoryPictures } from '../fakes/memory-pictures.ts';

/** Addresses that tell which are still good. */
function makeAddresses() {
  const good = new Map<string, Blob>();
  let n = 0;
  return {
    good,
    make: (picture: Blob) => {
      const address = `blob:loafward/${(n += 1)}`;
      good.set(address, picture);
      return address;
    },
    drop: (address: string) => void good.delete(address),
  };
}

const file = (...bytes: readonly number[]): Blob => new Blob([jpeg(...bytes)]);

it('shows what was taken, in the place of what was there, and each press can be taken back', async () => {
  const pictures = makeMemoryPictures();
  const addresses = makeAddresses();
  const book = await openBookPictures(pictures, true, addresses);
  const bytes = async (): Promise<Uint8Array | null> => {
    const address = book.shown()['lane-wheat'];
    return address === undefined
      ? null
      : new Uint8Array(await addresses.good.get(address)!.arrayBuffer());
  };
  expect(book.canTakeBack('lane-wheat')).toBe(false);
  expect(await book.take('lane-wheat', file(1))).toBeNull();
  expect(await bytes()).toEqual(jpeg(1));
  expect(await book.take('lane-wheat', file(2))).toBeNull();
  expect(await bytes()).toEqual(jpeg(2));
  expect(addresses.good.size).toBe(1);
  // Another page of the house, or this one after a reload, takes it back as well.
  const again = await openBookPictures(pictures, true, addresses);
  expect(again.canTakeBack('lane-wheat')).toBe(true);
  expect(await book.takeBack('lane-wheat')).toBeNull();
  expect(await bytes()).toEqual(jpeg(1));
  expect(book.canTakeBack('lane-wheat')).toBe(false);
  expect(await book.drop('lane-wheat')).toBeNull();
  expect(book.shown()).toEqual({});
  expect(await book.takeBack('lane-wheat')).toBeNull();
  expect(await bytes()).toEqual(jpeg(1));
  expect(pictures.rows).toEqual(new Map([['lane-wheat', { now: jpeg(1) }]]));
});

it('changes nothing where a file is none, where the disk is full, or where it only shows', async () => {
  const pictures = makeMemoryPictures((bytes) => (bytes[3] === 9 ? 'broken' : bytes));
  const addresses = makeAddresses();
  const book = await openBookPictures(pictures, true, addresses);
  await book.take('lane-wheat', file(1));
  const was = new Map(pictures.rows);
  const shown = book.shown();
  expect(await book.take('lane-wheat', file(9))).toBe('broken');
  const vast = { size: 20_000_001, arrayBuffer: () => Promise.reject(new Error('read')) };
  expect(await book.take('lane-wheat', vast as unknown as Blob)).toBe('large');
  expect(await book.take('lane-wheat', { ...vast, size: 9 } as unknown as Blob)).toBe('broken');
  pictures.fail('full');
  expect(await book.take('lane-wheat', file(2))).toBe('full');
  expect(await book.drop('lane-wheat')).toBe('full');
  pictures.fail('gone');
  expect(await book.takeBack('lane-wheat')).toBe('closed');
  pictures.fail(null);
  const shows = await openBookPictures(pictures, false, addresses);
  expect(Object.keys(shows.shown())).toEqual(['lane-wheat']);
  expect(await shows.drop('lane-wheat')).toBe('closed');
  expect(pictures.rows).toEqual(was);
  expect(book.shown()).toBe(shown);
  // Where those on the disk cannot be read, none is written over.
  pictures.fail('closed');
  await expect(openBookPictures(pictures, true, addresses)).rejects.toMatchObject({
    trouble: 'closed',
  });
});
