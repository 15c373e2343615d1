/** What is asked of the browser's own store of answers. */
export interface KeptParts {
  readonly fetch: (address: string) => Promise<Response>;
  readonly caches: Pick<CacheStorage, 'open'>;
}

/** Named apart from what the service worker keeps, which drops what is not of its own build. */
const NAME = 'loafward-ear';

/**
 * The files at these addresses, from this tablet or else from the server, and on this tablet from then on;
 * what an older build kept goes. Rejects where one can be neither had nor kept: without a network it would
 * not be there.
 */
export async function keptFiles(
  addresses: readonly string[],
  { fetch, caches }: KeptParts = {
    fetch: (address) => globalThis.fetch(address),
    caches: globalThis.caches,
  },
): Promise<readonly Uint8Array<ArrayBuffer>[]> {
  const kept = await caches.open(NAME);
  const fileAt = async (address: string): Promise<Uint8Array<ArrayBuffer>> => {
    const known = await kept.match(address);
    if (known) return new Uint8Array(await known.arrayBuffer());
    const came = await fetch(address);
    if (!came.ok) throw new Error(`${address}: ${came.status}`);
    await kept.put(address, came.clone());
    return new Uint8Array(await came.arrayBuffer());
  };
  const files = await Promise.all(addresses.map(fileAt));
  const wanted = new Set(addresses.map((address) => new URL(address, 'http://here').pathname));
  for (const old of await kept.keys())
    if (!wanted.has(new URL(old.url).pathname)) await kept.delete(old);
  return files;
}
