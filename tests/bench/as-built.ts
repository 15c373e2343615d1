import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * A module of the bench as the app's own build would make it: what runs scripts straight from source
 * names every inner function at each call, and measures that.
 */
export async function asBuilt<T>(file: string): Promise<T> {
  const outDir = mkdtempSync(join(tmpdir(), 'bench-'));
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: fileURLToPath(new URL(file, import.meta.url)),
      outDir,
      emptyOutDir: true,
      rollupOptions: { output: { entryFileNames: 'built.mjs' } },
    },
  });
  return (await import(pathToFileURL(join(outDir, 'built.mjs')).href)) as T;
}
