import type { Jpeg, KeptPicture } from '../../../machines/ports.ts';
import type { SavedPicture } from '../../core/pictures/saved-picture.ts';

/** So many bytes are made letters at once: a call takes no more arguments than that everywhere. */
const AT_ONCE = 0x2000;

function toBase64(bytes: Jpeg): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    letters += String.fromCharCode(...bytes.subarray(at, at + AT_ONCE));
  return btoa(letters);
}

/** The pictures that there are, as lines of a saved file. What may be taken back stays here. */
export const toSaved = (rows: ReadonlyMap<string, KeptPicture>): readonly SavedPicture[] =>
  [...rows].flatMap(([picture, { now }]) =>
    now === null ? [] : [{ picture, jpeg: toBase64(now) }],
  );

/** The bytes of a saved picture. @throws where its letters are no base64, which its reader has refused */
export const jpegOf = ({ jpeg }: SavedPicture): Jpeg =>
  Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0));
