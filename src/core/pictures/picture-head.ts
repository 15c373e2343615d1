/** What a file of a picture says of itself at its beginning. Sides in pixels; null: it does not say. */
export interface PictureHead {
  readonly kind: 'jpeg' | 'png' | 'gif' | 'webp' | 'heif';
  readonly size: { readonly width: number; readonly height: number } | null;
}

type Bytes = Uint8Array;
type Size = PictureHead['size'];

const text = (bytes: Bytes, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));
/** A number of so many bytes, the greatest first; 0 past the end. */
const big = (bytes: Bytes, at: number, length: number): number => {
  let value = 0;
  for (let i = at; i < at + length; i++) value = value * 256 + (bytes[i] ?? 0);
  return value;
};
/** The same, the least first. */
const little = (bytes: Bytes, at: number, length: number): number => {
  let value = 0;
  for (let i = at + length - 1; i >= at; i--) value = value * 256 + (bytes[i] ?? 0);
  return value;
};
const sized = (width: number, height: number): Size =>
  width > 0 && height > 0 ? { width, height } : null;

/** Marks of a frame among C0 to CF; the other three are tables (ISO/IEC 10918-1, table B.1). */
const isFrame = (mark: number): boolean =>
  mark >= 0xc0 && mark <= 0xcf && mark !== 0xc4 && mark !== 0xc8 && mark !== 0xcc;

/** From segment to segment up to the first frame; what the camera wrote stands before it. */
function jpegSize(bytes: Bytes): Size {
  let at = 2;
  while (at + 9 <= bytes.length && bytes[at] === 0xff) {
    const mark = bytes[at + 1]!;
    if (isFrame(mark)) return sized(big(bytes, at + 7, 2), big(bytes, at + 5, 2));
    // A filling byte, or a segment with its length.
    at += mark === 0xff ? 1 : 2 + Math.max(2, big(bytes, at + 2, 2));
  }
  return null;
}

/** Its first chunk is one of three (RFC 9649 §2.5 to 2.7). */
function webpSize(bytes: Bytes): Size {
  const chunk = text(bytes, 12, 4);
  if (chunk === 'VP8X') return sized(little(bytes, 24, 3) + 1, little(bytes, 27, 3) + 1);
  if (chunk === 'VP8 ') return sized(little(bytes, 26, 2) & 0x3fff, little(bytes, 28, 2) & 0x3fff);
  if (chunk !== 'VP8L') return null;
  const bits = little(bytes, 21, 4);
  return sized((bits & 0x3fff) + 1, (Math.floor(bits / 0x4000) & 0x3fff) + 1);
}

const BRANDS = /^(avi[fs]|hei[cxms]|hev[cx]|mif1|msf1)$/;

/**
 * What kind of picture a file is by its first bytes, whatever it is called, and how large; null: none.
 * Whether the rest of it is whole, only opening it tells. Never throws.
 */
export function readPictureHead(bytes: Bytes): PictureHead | null {
  if (big(bytes, 0, 3) === 0xffd8ff) return { kind: 'jpeg', size: jpegSize(bytes) };
  if (big(bytes, 0, 4) === 0x89504e47 && big(bytes, 4, 4) === 0x0d0a1a0a)
    return { kind: 'png', size: sized(big(bytes, 16, 4), big(bytes, 20, 4)) };
  if (/^GIF8[79]a$/.test(text(bytes, 0, 6)))
    return { kind: 'gif', size: sized(little(bytes, 6, 2), little(bytes, 8, 2)) };
  if (text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 4) === 'WEBP')
    return { kind: 'webp', size: webpSize(bytes) };
  if (text(bytes, 4, 4) === 'ftyp' && BRANDS.test(text(bytes, 8, 4)))
    return { kind: 'heif', size: null };
  return null;
}
