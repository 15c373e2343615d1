import { encode } from 'uqr';
import type { DrawnCode } from '../../core/sheets/handed.ts';
import { MOST_MODULES } from '../../core/sheets/link-form.ts';

/** Blank modules round a code, by its standard (ISO/IEC 18004). */
const BLANK = 4;

/** The QR code of a text; null where it would be too fine for a telephone to read off a tablet. */
export function codeOf(text: string): DrawnCode | null {
  const maxVersion = (MOST_MODULES - 17) / 4;
  let found: ReturnType<typeof encode>;
  try {
    found = encode(text, { ecc: 'L', boostEcc: true, maxVersion, border: BLANK });
  } catch {
    return null;
  }
  const { data, size } = found;
  const path = data
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return { size, path };
}
