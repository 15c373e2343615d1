import type { Jpeg, NoPicture } from '../../../machines/ports.ts';
import { fitWithin } from '../../core/pictures/fit-within.ts';
import { readPictureHead } from '../../core/pictures/picture-head.ts';
import { PICTURE_LIMITS } from '../../core/pictures/picture-limits.ts';
import { openInBrowser } from './browser-picture.ts';

/** Longer side, px, and quality: the first that is small enough is taken. The last ends even noise. Judgement. */
const TRIES = [
  [PICTURE_LIMITS.side, 0.82],
  [PICTURE_LIMITS.side, 0.65],
  [PICTURE_LIMITS.side, 0.45],
  [768, 0.5],
  [512, 0.5],
  [320, 0.4],
] as const;

/**
 * A file made a small JPEG, or why not: by its first bytes it is no picture, it is larger than a tablet
 * can open, or it is broken. Never rejects.
 */
export async function shrink(
  file: Uint8Array<ArrayBuffer>,
  open = openInBrowser,
): Promise<Jpeg | NoPicture> {
  if (file.length > PICTURE_LIMITS.bytes) return 'large';
  const head = readPictureHead(file);
  if (head === null) return 'none';
  if (head.size && head.size.width * head.size.height > PICTURE_LIMITS.pixels) return 'large';
  try {
    const picture = await open(new Blob([file]));
    try {
      for (const [side, quality] of TRIES) {
        const { width, height } = fitWithin(picture, side);
        const small = await picture.jpeg(width, height, quality);
        if (small !== null && small.size <= PICTURE_LIMITS.kept)
          return new Uint8Array(await small.arrayBuffer());
      }
      return 'broken';
    } finally {
      picture.close();
    }
  } catch {
    return 'broken';
  }
}
