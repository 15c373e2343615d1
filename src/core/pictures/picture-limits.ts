/**
 * What a picture may be: of the file that is chosen the bytes, and the pixels a tablet can open at once;
 * of the one that is kept its longer side, px, and its bytes. Judgement.
 */
export const PICTURE_LIMITS = {
  bytes: 20_000_000,
  pixels: 60_000_000,
  side: 1024,
  kept: 200_000,
} as const;
