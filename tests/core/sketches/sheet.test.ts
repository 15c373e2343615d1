import { readFileSync } from 'node:fs';
import { crc32, inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { asPng } from '../../../assets/make/sketches/indexed.ts';

/** The chunks of a PNG by their kind, each with the sum it carries. */
const chunksOf = (png: Buffer) => {
  const chunks = [];
  for (let at = 8; at < png.length;) {
    const end = at + 8 + png.readUInt32BE(at);
    const body = png.subarray(at + 4, end);
    const kind = body.toString('latin1', 0, 4);
    chunks.push({ kind, data: body.subarray(4), whole: png.readUInt32BE(end) === crc32(body) });
    at = end + 4;
  }
  return chunks;
};

test('a picture of few colours is written so that a PNG reader gets it back', () => {
  const png = asPng({
    wide: 3,
    high: 2,
    colours: [0xfbf6ef, 0x2b1730],
    pixels: Uint8Array.from([0, 1, 0, 1, 1, 0]),
  });
  const [header, palette, pixels, end] = chunksOf(png);
  expect(png.toString('hex', 0, 8)).toBe('89504e470d0a1a0a');
  expect([header, palette, pixels, end].map((one) => [one?.kind, one?.whole])).toEqual([
    ['IHDR', true],
    ['PLTE', true],
    ['IDAT', true],
    ['IEND', true],
  ]);
  expect(header?.data.toString('hex')).toBe('00000003000000020803000000');
  expect(palette?.data.toString('hex')).toBe('fbf6ef2b1730');
  expect([...inflateSync(pixels?.data ?? Buffer.alloc(0))]).toEqual([0, 0, 1, 0, 0, 1, 1, 0]);
});

test('the sheet of all sketches is a whole PNG, and light', () => {
  const sheet = readFileSync(new URL('../../../docs/sketches.png', import.meta.url));
  expect(chunksOf(sheet).filter(({ whole }) => !whole)).toEqual([]);
  expect(sheet.length).toBeLessThanOrEqual(400 * 1000);
});
