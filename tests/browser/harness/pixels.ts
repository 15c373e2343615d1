import { inflateSync } from 'node:zlib';

/** A picture as it was painted: 8-bit RGB, row by row. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** 0 to 255 each. */
  readonly at: (x: number, y: number) => readonly [number, number, number];
}

const paeth = (a: number, b: number, c: number): number => {
  const [pa, pb, pc] = [Math.abs(b - c), Math.abs(a - c), Math.abs(a + b - 2 * c)];
  return pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
};

/** What a row's bytes are told against, by its filter: PNG (ISO/IEC 15948), 9.2. */
const GUESSES: readonly ((left: number, up: number, corner: number) => number)[] = [
  () => 0,
  (left) => left,
  (_, up) => up,
  (left, up) => (left + up) >> 1,
  paeth,
];

/** Reads a PNG of 8-bit RGB or RGBA, not interlaced, as Chromium photographs. @throws on any other */
export function readPng(png: Buffer): Pixels {
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  const [depth, colour, , , interlaced] = png.subarray(24, 29);
  if (depth !== 8 || (colour !== 2 && colour !== 6) || interlaced !== 0)
    throw new Error(`Only 8-bit RGB is read, not depth ${depth}, colour ${colour}.`);
  const channels = colour === 6 ? 4 : 3;
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(png.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  const raw = inflateSync(Buffer.concat(parts));
  const stride = width * channels;
  const out = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y++) {
    const guess = GUESSES[raw[y * (stride + 1)] ?? 0]!;
    for (let i = 0; i < stride; i++) {
      const left = i >= channels ? out[y * stride + i - channels]! : 0;
      const up = y > 0 ? out[(y - 1) * stride + i]! : 0;
      const corner = y > 0 && i >= channels ? out[(y - 1) * stride + i - channels]! : 0;
      out[y * stride + i] = raw[y * (stride + 1) + 1 + i]! + guess(left, up, corner);
    }
  }
  return {
    width,
    height,
    at: (x, y) => {
      const i = (Math.round(y) * width + Math.round(x)) * channels;
      return [out[i] ?? 0, out[i + 1] ?? 0, out[i + 2] ?? 0];
    },
  };
}

/** What each value of a channel gives of light. */
const LIGHT = Float64Array.from({ length: 256 }, (_, n) => {
  const c = n / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

/** Relative luminance after WCAG 2.2, 0 to 1. */
export const luminance = ([r, g, b]: readonly [number, number, number]): number =>
  0.2126 * LIGHT[r]! + 0.7152 * LIGHT[g]! + 0.0722 * LIGHT[b]!;

export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Luminances closer than this are one. */
const STEPS = 1_000;

/**
 * Contrast of what is painted in a box: of the ground, which is its most frequent luminance, against the
 * ink, which is whatever lies furthest from it. 1 where nothing is painted.
 */
export function paintedContrast(picture: Pixels, { left, top, right, bottom }: Rect): number {
  const seen = new Uint32Array(STEPS + 1);
  for (let y = Math.max(0, Math.ceil(top)); y < Math.min(picture.height, bottom); y++)
    for (let x = Math.max(0, Math.ceil(left)); x < Math.min(picture.width, right); x++)
      seen[Math.round(luminance(picture.at(x, y)) * STEPS)]! += 1;
  const ground = seen.indexOf(Math.max(...seen));
  const ends = [seen.findIndex((n) => n > 0), seen.findLastIndex((n) => n > 0)];
  if (ends[0] === -1) return 1;
  return Math.max(
    ...ends.map((l) => (Math.max(l, ground) / STEPS + 0.05) / (Math.min(l, ground) / STEPS + 0.05)),
  );
}
