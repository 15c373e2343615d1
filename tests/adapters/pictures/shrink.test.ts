import { expect, it, vi } from 'vitest';
import type { OpenPicture } from '../../../src/adapters/pictures/browser-picture.ts';
import { shrink } from '../../../src/adapters/pictures/shrink.ts';
import { PICTURE_LIMITS } from '../../../src/core/pictures/picture-limits.ts';
import { jpeg } from '../../fakes/memory-pictures.ts';

/** A browser that opens any picture as one of this size, and whose JPEGs have so many bytes a pixel. */
const browser = (width: number, height: number, weight: (quality: number) => number) => {
  const made: (readonly [number, number, number])[] = [];
  const close = vi.fn();
  const open = (): Promise<OpenPicture> =>
    Promise.resolve({
      ...{ width, height, close },
      jpeg: (wide, high, quality) => {
        made.push([wide, high, quality]);
        return Promise.resolve(new Blob([new Uint8Array(wide * high * weight(quality))]));
      },
    });
  return { made, close, open };
};

it('makes it 1,024 px at its longer side, in the first quality that is small enough', async () => {
  const plain = browser(4000, 3000, () => 0.1);
  const small = await shrink(jpeg(1), plain.open);
  expect(small).toHaveLength(Math.floor(1024 * 768 * 0.1));
  expect(plain.made).toEqual([[1024, 768, 0.82]]);
  expect(plain.close).toHaveBeenCalledOnce();
  const rich = browser(3000, 4000, (quality) => quality);
  expect((await shrink(jpeg(1), rich.open)).length).toBeLessThanOrEqual(PICTURE_LIMITS.kept);
  expect(rich.made.map(([wide, high]) => Math.max(wide, high))).toEqual([
    1024, 1024, 1024, 768, 512,
  ]);
});

it('leaves a small one as large as it is', async () => {
  const { made, open } = browser(300, 200, () => 0.1);
  await shrink(jpeg(1), open);
  expect(made).toEqual([[300, 200, 0.82]]);
});

it('opens nothing that is no picture, or that a tablet could not open', async () => {
  const open = vi.fn();
  const words = new TextEncoder().encode('Flour, water, salt');
  expect(await shrink(words, open)).toBe('none');
  expect(await shrink(new Uint8Array(0), open)).toBe('none');
  expect(await shrink(new Uint8Array(PICTURE_LIMITS.bytes + 1), open)).toBe('large');
  // Few bytes that would be 30,000 by 30,000 dots.
  const vast = [...[0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10], ...[0, 0, 0, 13, 73, 72, 68, 82]];
  expect(await shrink(Uint8Array.from([...vast, 0, 0, 117, 48, 0, 0, 117, 48]), open)).toBe(
    'large',
  );
  expect(open).not.toHaveBeenCalled();
});

it('calls it broken where it cannot be opened, drawn or made small', async () => {
  expect(await shrink(jpeg(1), () => Promise.reject(new Error('torn')))).toBe('broken');
  const close = vi.fn();
  const none = { width: 9, height: 9, close, jpeg: () => Promise.resolve(null) };
  expect(await shrink(jpeg(1), () => Promise.resolve(none))).toBe('broken');
  const fails = { ...none, jpeg: () => Promise.reject(new Error('no memory')) };
  expect(await shrink(jpeg(1), () => Promise.resolve(fails))).toBe('broken');
  expect(close).toHaveBeenCalledTimes(2);
  const heavy = browser(4000, 4000, () => 9);
  expect(await shrink(jpeg(1), heavy.open)).toBe('broken');
  expect(heavy.made).toHaveLength(6);
});
