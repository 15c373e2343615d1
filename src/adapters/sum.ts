import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** Of a text its SHA-256 (FIPS 180-4), in small hexadecimal digits. */
export const sumOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** The same of a long one: by the browser's own, aside and many times as quick, where the page came by https. */
export async function longSum(
  text: string,
  subtle: Pick<SubtleCrypto, 'digest'> | null = globalThis.crypto?.subtle ?? null,
): Promise<string> {
  if (!subtle) return sumOf(text);
  return bytesToHex(new Uint8Array(await subtle.digest('SHA-256', new TextEncoder().encode(text))));
}
