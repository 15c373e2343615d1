import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * A module of the bench as the app's own build would make it: what runs scripts straight from source
 * names every inner function at each call, and measures that.
 */
export async function asBuilt<T>(file: string): Promise<T> {
  // Where the libraries it keeps outside itself are found.
  const libraries = fileURLToPath(new URL('../../node_modules/', import.meta.url));
  const outDir = mkdtempSync(join(libraries, '.bench-'));
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
  const built = (await import(pathToFileURL(join(outDir, 'built.mjs')).href)) as T;
  rmSync(outDir, { recursive: true });
  return built;
}
