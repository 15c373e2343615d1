/** So many bytes are made letters at once: a call takes no more arguments than that everywhere. */
const AT_ONCE = 0x2000;

/** Bytes as letters (RFC 4648 §4). */
export function toBase64(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    letters += String.fromCharCode(...bytes.subarray(at, at + AT_ONCE));
  return btoa(letters);
}

/** And back. @throws where the letters are no base64, which their reader has refused */
export const fromBase64 = (letters: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
