import { describe, type Misread } from '../formula/read-fields.ts';
import { PICTURE_LIMITS } from './picture-limits.ts';

/** A picture as a line of a saved file: the id of its formula, and a JPEG in base64 (RFC 4648 §4). */
export interface SavedPicture {
  readonly picture: string;
  readonly jpeg: string;
}

const ID = /^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/;
/** A JPEG begins with the bytes FF D8 FF. */
const JPEG = /^\/9j\/[A-Za-z0-9+/]*={0,2}$/;
const MOST = Math.ceil(PICTURE_LIMITS.kept / 3) * 4;

/** Whether a line of a saved file wants to be a picture. */
export const isPictureLine = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && 'picture' in value;

/** A picture's line, or what of it cannot be read. Never throws. */
export function readSavedPicture({
  picture,
  jpeg,
}: Readonly<Record<string, unknown>>):
  | { readonly saved: SavedPicture; readonly reason?: never }
  | { readonly saved: null; readonly reason: Misread } {
  const no = (path: string, expected: string, got: unknown) => ({
    saved: null,
    reason: { path, expected, got: describe(got) },
  });
  if (typeof picture !== 'string' || !ID.test(picture))
    return no('picture', 'a formula’s id', picture);
  if (typeof jpeg !== 'string' || !JPEG.test(jpeg) || jpeg.length % 4 !== 0)
    return no('jpeg', 'a JPEG in base64', jpeg);
  if (jpeg.length > MOST) return no('jpeg', `at most ${MOST} letters`, `${jpeg.length} letters`);
  return { saved: { picture, jpeg } };
}
