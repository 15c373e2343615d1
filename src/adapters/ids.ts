/** Names for facts, and the name of the tablet they were noted on. */
export interface Ids {
  readonly device: string;
  /** A new id, never given before on any device. */
  next(): string;
}

/** Ids of facts noted on `device`: its first eight characters, for whoever reads a log, then chance. */
export function makeIds(device: string): Ids {
  return { device, next: () => `${device.slice(0, 8)}-${randomId()}` };
}

/** A random UUID (version 4). Plain http has no randomUUID, so there it is put together by hand. */
export function randomId(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  // RFC 9562, 5.4: version 4 in the high half of byte 6, variant 10 in the top bits of byte 8.
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [0, 8, 12, 16, 20].map((from, i, all) => hex.slice(from, all[i + 1])).join('-');
}
