import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { mime } from './mime.ts';

export type Packing = 'br' | 'gzip';

/** One file to serve, with its packed forms made once, when first asked for. */
export interface Page {
  readonly type: string;
  /** A hash of the content, for ETag. */
  readonly hash: string;
  readonly body: Buffer;
  /** The packed body, or null where packing does not make it smaller. */
  packed(how: Packing): Buffer | null;
}

/** Every path that can be asked for, `/index.html` and so on. What is not in it does not exist. */
export type Site = ReadonlyMap<string, Page>;

/** Longer is packed less tightly: at full pains 14 MB keep every tablet waiting for seconds, for a twentieth. */
const LONG = 4_000_000;

const PACKERS: Readonly<Record<Packing, (body: Buffer) => Buffer>> = {
  br: (body) =>
    brotliCompressSync(body, {
      params: { [constants.BROTLI_PARAM_QUALITY]: body.length > LONG ? 5 : 9 },
    }),
  gzip: (body) => gzipSync(body, { level: 9 }),
};

/** A page of `name`, whose ending gives its type, with these bytes. */
export function makePage(name: string, body: Buffer): Page {
  const { type, shrinks } = mime(name);
  const kept = new Map<Packing, Buffer | null>();
  return {
    type,
    hash: createHash('sha256').update(body).digest('base64url').slice(0, 22),
    body,
    packed(how) {
      if (!shrinks) return null;
      let packed = kept.get(how);
      if (packed === undefined) {
        const tried = PACKERS[how](body);
        packed = tried.length < body.length ? tried : null;
        kept.set(how, packed);
      }
      return packed;
    },
  };
}

/**
 * Reads a built folder whole. Served from memory, a page and its scripts always belong to the
 * same build, and no request can reach a file outside it. Links and hidden files are left out.
 *
 * @throws when the folder cannot be read
 */
export async function readSite(dir: string): Promise<Site> {
  const entries = await readdir(dir, { recursive: true, withFileTypes: true });
  const site = new Map<string, Page>();
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const file = join(entry.parentPath, entry.name);
    const path = file.slice(join(dir, sep).length).split(sep).join('/');
    if (path.split('/').some((part) => part.startsWith('.'))) continue;
    site.set(`/${path}`, makePage(entry.name, await readFile(file)));
  }
  return site;
}
