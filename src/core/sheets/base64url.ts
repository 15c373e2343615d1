const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/**
 * Bytes as letters that a link may hold as they are (RFC 4648 §5, no padding).
 *
 * @example
 * toBase64Url([0, 16, 131, 250]) // → 'ABCD-g'
 */
export function toBase64Url(bytes: Iterable<number>): string {
  let text = '';
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = ((held << 8) | byte) & 0xfff;
    bits += 8;
    while (bits >= 6) {
      bits -= 6;
      text += LETTERS[(held >> bits) & 63];
    }
  }
  return bits > 0 ? text + LETTERS[(held << (6 - bits)) & 63] : text;
}

/**
 * The bytes of such letters; null where anything else stands among them.
 *
 * @example
 * fromBase64Url('ABCD-g') // → [0, 16, 131, 250]
 * fromBase64Url('a=b') // → null
 */
export function fromBase64Url(text: string): number[] | null {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (const letter of text) {
    const six = LETTERS.indexOf(letter);
    if (six < 0) return null;
    held = ((held << 6) | six) & 0xfff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes.push((held >> bits) & 255);
    }
  }
  return bytes;
}
