import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

export interface FirstLoad {
  /** Script and style that index.html itself asks for, by file. */
  readonly files: readonly { readonly file: string; readonly bytes: number }[];
  readonly bytes: number;
}

/** What must arrive before anything can be shown: script and style, packed as the server packs them. */
export function firstLoad(site: string): FirstLoad {
  const html = readFileSync(join(site, 'index.html'), 'utf8');
  const files = [...html.matchAll(/(?:src|href)="(\/[^"]+\.(?:js|css))"/g)].map(([, file]) => ({
    file: file!,
    bytes: gzipSync(readFileSync(join(site, file!)), { level: 9 }).length,
  }));
  return { files, bytes: files.reduce((sum, { bytes }) => sum + bytes, 0) };
}
