import type { Jpeg, KeptPicture } from '../../../machines/ports.ts';
import type { SavedPicture } from '../../core/pictures/saved-picture.ts';
import { fromBase64, toBase64 } from '../base64.ts';

/** The pictures that there are, as lines of a saved file. What may be taken back stays here. */
export const toSaved = (rows: ReadonlyMap<string, KeptPicture>): readonly SavedPicture[] =>
  [...rows].flatMap(([picture, { now }]) =>
    now === null ? [] : [{ picture, jpeg: toBase64(now) }],
  );

/** The bytes of a saved picture. @throws where its letters are no base64, which its reader has refused */
export const jpegOf = ({ jpeg }: SavedPicture): Jpeg => fromBase64(jpeg);
