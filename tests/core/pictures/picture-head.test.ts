import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitWithin } from '../../../src/core/pictures/fit-within.ts';
import { readPictureHead } from '../../../src/core/pictures/picture-head.ts';

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const two = (value: number): number[] => [value >> 8, value & 255];
const bytes = (...parts: readonly (number | string)[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? ascii(part) : part)));

/** A JPEG whose frame stands behind a long segment, as a camera writes one: place, hour, a small picture. */
const jpeg = (width: number, height: number, mark = 0xc2, before = 50_000): Uint8Array =>
  bytes(
    ...[0xff, 0xd8],
    ...[0xff, 0xe1, ...two(before + 2), ...Array.from({ length: before }, () => 0x20)],
    // Tables are no frame.
    ...[0xff, 0xc4, 0, 4, 9, 9],
    ...[0xff, 0xff, mark, 0, 17, 8, ...two(height), ...two(width), 3],
  );

describe('the head of a picture', () => {
  it.each([
    ['jpeg', jpeg(4032, 3024), { width: 4032, height: 3024 }],
    ['jpeg', jpeg(640, 480, 0xc0, 0), { width: 640, height: 480 }],
    [
      'png',
      bytes(0x89, 'PNG', 13, 10, 26, 10, 0, 0, 0, 13, 'IHDR', 0, 0, 4, 0, 0, 0, 3, 0),
      { width: 1024, height: 768 },
    ],
    ['gif', bytes('GIF89a', 0x40, 1, 0xf0, 0), { width: 320, height: 240 }],
    [
      'webp',
      bytes('RIFF', 0, 0, 0, 0, 'WEBPVP8X', 10, 0, 0, 0, 0, 0, 0, 0, 0xff, 3, 0, 0xff, 2, 0),
      { width: 1024, height: 768 },
    ],
    [
      'webp',
      bytes('RIFF', 0, 0, 0, 0, 'WEBPVP8 ', 0, 0, 0, 0, 0, 0, 0, 0x9d, 1, 0x2a, 0x80, 2, 0xe0, 1),
      { width: 640, height: 480 },
    ],
    // 640 − 1 and 480 − 1 in 14 bits each.
    [
      'webp',
      bytes('RIFF', 0, 0, 0, 0, 'WEBPVP8L', 0, 0, 0, 0, 0x2f, 0x7f, 0xc2, 0x77, 0),
      { width: 640, height: 480 },
    ],
    ['heif', bytes(0, 0, 0, 24, 'ftypheic', 0, 0, 0, 0), null],
  ] as const)('of a %s tells how large it is', (kind, file, size) => {
    expect(readPictureHead(file)).toEqual({ kind, size });
  });

  it.each([
    ['nothing', bytes()],
    ['words', bytes('Flour, water, salt')],
    ['a drawing in letters', bytes('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    ['a sound', bytes('RIFF', 0, 0, 0, 0, 'WAVEfmt ')],
    ['a film', bytes(0, 0, 0, 24, 'ftypisom')],
    ['a packed file', bytes('PK', 3, 4)],
  ])('is none where the file is %s', (_, file) => {
    expect(readPictureHead(file)).toBeNull();
  });

  it('says no size where it was cut or has none', () => {
    expect(readPictureHead(jpeg(4032, 3024).subarray(0, 20_000))?.size).toBeNull();
    expect(readPictureHead(jpeg(0, 3024))?.size).toBeNull();
    expect(readPictureHead(bytes(0x89, 'PNG', 13, 10, 26, 10))?.size).toBeNull();
  });

  it('never throws, whatever comes behind a good beginning', () => {
    const begun = fc.constantFrom(
      ...[[0xff, 0xd8, 0xff], [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10], ascii('GIF87a'), []],
      ...['VP8 ', 'VP8L', 'VP8X', 'none'].map((chunk) => ascii(`RIFF0000WEBP${chunk}`)),
    );
    fc.assert(
      fc.property(begun, fc.uint8Array({ maxLength: 200 }), (first, rest) => {
        const head = readPictureHead(Uint8Array.from([...first, ...rest]));
        for (const side of Object.values(head?.size ?? {})) expect(side).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a picture fitted within a side', () => {
  it('keeps its shape, is never larger and never of nothing', () => {
    expect(fitWithin({ width: 4000, height: 3000 }, 1024)).toEqual({ width: 1024, height: 768 });
    expect(fitWithin({ width: 300, height: 200 }, 1024)).toEqual({ width: 300, height: 200 });
    expect(fitWithin({ width: 10_000, height: 1 }, 1024)).toEqual({ width: 1024, height: 1 });
    const side = fc.integer({ min: 1, max: 60_000 });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const small = fitWithin({ width, height }, 1024);
        expect(Math.max(small.width, small.height)).toBeLessThanOrEqual(1024);
        expect(Math.min(small.width, small.height)).toBeGreaterThanOrEqual(1);
        expect(small.width).toBeLessThanOrEqual(width);
      }),
    );
  });
});
