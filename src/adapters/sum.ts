import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** Of a text its SHA-256 (FIPS 180-4), in small hexadecimal digits; the browser's own wants https. */
export const sumOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
