import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { vi } from 'vitest';
import { serve, type Served } from '../../../src/serve/serve.ts';
import { HEAR_FILES } from './hear.ts';
import type { Tab } from './tab.ts';

const voice = fileURLToPath(new URL('../../../assets/voice/', import.meta.url));

/** The spoken clips as the app's own server has them. */
const VOICE_FILES = (): Record<string, Buffer> =>
  Object.fromEntries(
    readdirSync(voice).map((name) => [`/voice/${name}`, readFileSync(join(voice, name))]),
  );

export interface SoundSite {
  /** The folder of the page. */
  readonly dir: string;
  readonly server: Served;
  close(): Promise<void>;
}

/** A page that has nothing but what sounds (`pages/sound.ts`), built and served, the voice with it. */
export async function openSoundSite(): Promise<SoundSite> {
  const dir = await mkdtemp(join(tmpdir(), 'loafward-sound-'));
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      outDir: dir,
      emptyOutDir: true,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL('../pages/sound.ts', import.meta.url)),
        formats: ['es'],
        fileName: () => 'sound.js',
      },
    },
  });
  await writeFile(
    join(dir, 'index.html'),
    '<!doctype html><html lang="en"><meta charset="utf-8"><title>Sound</title>' +
      '<script type="module" src="/sound.js"></script><body></body></html>',
  );
  const server = await serve({ dir, extra: { ...HEAR_FILES, ...VOICE_FILES() } });
  return {
    dir,
    server,
    async close() {
      await server.close();
      await rm(dir, { recursive: true });
    },
  };
}

/** Its sound is on, and its voice has spoken: index and files come with the first words. */
export async function armed(tab: Tab): Promise<void> {
  const becomes = (label: string) =>
    vi.waitFor(
      async () => {
        const is = await tab.evaluate('document.querySelector("button")?.textContent');
        if (is !== label) throw new Error(`The page’s sound is ${String(is)}, not ${label}.`);
      },
      { timeout: 20_000 },
    );
  await becomes('locked');
  await tab.tap('button');
  await becomes('armed');
  await tab.evaluate(`speaker.say('stand back').over`);
}
