import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { VitePWA } from 'vite-plugin-pwa';
import solid from 'vite-plugin-solid';
import type { Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';
import { noteLicences, shipLicences } from './assets/make/ship-licences.ts';
import { partsPage } from './tests/screens/gallery/dev-page.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** assets/ is served as it is; the scripts that made its files stay behind, before the list of
 * files to keep offline is drawn up. */
const leaveScriptsBehind = {
  name: 'leave-scripts-behind',
  apply: 'build' as const,
  writeBundle: ({ dir }: { dir?: string }) =>
    rm(join(dir ?? here('./dist'), 'make'), { recursive: true, force: true }),
};

/** When a build fails, the service worker's plugin fails after it and hides why: say why first. */
const sayWhy = {
  name: 'say-why',
  apply: 'build' as const,
  buildEnd: (error?: Error) => {
    if (error) console.error(error.message);
  },
};

/** Two noisy cores: a slow machine is not a fault. Against what hangs, and no measure of anything, ms. */
const PATIENCE = 30_000;

const inNode = (name: string, dir = name) => ({
  root: here('.'),
  test: {
    name,
    root: here('.'),
    include: [`tests/${dir}/**/*.test.ts`],
    environment: 'node' as const,
    testTimeout: PATIENCE,
  },
});
/** Nothing of one file's reaches another: what all of them import is read once a worker. */
const inOneWorld = (name: string) => {
  const { root, test } = inNode(name);
  return { root, test: { ...test, isolate: false } };
};

/** What is made of Solid, with the build of it that a browser gets. */
const inSolid = (name: string, test: object) => ({
  plugins: [solid()],
  root: here('.'),
  test: { name, root: here('.'), testTimeout: PATIENCE, ...test },
});

/** What holds real time to a figure: nothing may run beside it. */
const ALONE = [
  'busy-touch',
  'calls',
  'calm',
  'coming-back',
  'ear-hears',
  'heard',
  'numbers-sound',
  'planner',
].map((name) => `tests/browser/${name}.test.ts`);

/** A real Chromium on the built app. A walk waits for its page half the time: two share two cores. */
const inBrowser = {
  root: here('.'),
  test: {
    ...inOneWorld('browser').test,
    exclude: ALONE,
    globalSetup: 'tests/browser/harness/build-once.ts',
    setupFiles: 'tests/browser/harness/tidy.ts',
    // Against what hangs, and no measure of anything: what must be quick says so itself.
    testTimeout: 400_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 20_000 } },
  },
};

const inBrowserAlone = {
  root: here('.'),
  test: { ...inBrowser.test, name: 'alone', include: ALONE, exclude: [], fileParallelism: false },
};

/** Full matrices, soaks and mutants: run by hand, as long as they take. */
const inFaults = {
  // A house that runs in Node is made of Solid as a browser gets it.
  plugins: [solid()],
  root: here('.'),
  test: {
    ...inBrowserAlone.test,
    name: 'faults',
    include: ['tests/faults/**/*.test.ts'],
    testTimeout: 1_800_000,
  },
};

let started: Set<string> | undefined;
/** What is imported, or imported by what is imported, before the page can show anything: one piece. */
const whatStarts = (id: string, graph: Rolldown.ChunkingContext): string | null => {
  if (!started) {
    started = new Set([here('src/index.html')]);
    for (const seen of started)
      for (const next of graph.getModuleInfo(seen)?.importedIds ?? []) started.add(next);
  }
  return started.has(id) ? 'first' : null;
};

export default defineConfig({
  root: 'src',
  publicDir: '../assets',
  cacheDir: '../node_modules/.vite',
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    // A chunk finds its own scripts: a list of them all would be the longest part of the first one.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, deps, { hostType }) =>
        hostType === 'html' ? deps : deps.filter((file) => file.endsWith('.css')),
    },
    rolldownOptions: {
      checks: { bundlerTimings: false },
      output: {
        // Two pieces pack smaller, and come sooner, than the two hundred they would be split into for the
        // later chunks' sake: what the page starts with, and what its pages share.
        codeSplitting: {
          groups: [
            { name: whatStarts, priority: 1 },
            { name: 'house', test: /\/(src|machines)\//, minShareCount: 2 },
          ],
        },
      },
    },
  },
  // A thread's own parts come late too.
  worker: { format: 'es', plugins: () => [noteLicences()] },
  plugins: [
    // A style written into a template would be inline style, which our content policy refuses.
    solid({ solid: { ...({ inlineStyles: false } as object) } }),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      workbox: {
        // The whole build, whatever it holds: a bake goes on without a network.
        globPatterns: ['**/*'],
        // What runs the learned ear weighs as much as all else, and comes where it was chosen.
        globIgnores: ['**/*.{wasm,onnx}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        cleanupOutdatedCaches: true,
        // The first visit is already kept; a newer version still waits until it is taken.
        clientsClaim: true,
        skipWaiting: false,
        navigateFallback: '/index.html',
        // A path that ends in a file name is a file: the authority of `--lan`, for one.
        navigateFallbackDenylist: [/\.[a-z0-9]+$/i],
        inlineWorkboxRuntime: true,
      },
    }),
    shipLicences(),
    partsPage(),
    leaveScriptsBehind,
    sayWhy,
  ],
  test: {
    projects: [
      inOneWorld('core'),
      inOneWorld('machines'),
      inOneWorld('truth'),
      inSolid('app', {
        include: ['tests/{screens,adapters,app}/**/*.test.ts'],
        setupFiles: 'tests/app/settle.ts',
        environment: 'node',
        isolate: false,
      }),
      // Whoever needs a page says so by its ending: an environment of its own costs a second a file.
      inSolid('dom', {
        include: ['tests/{screens,adapters,app}/**/*.test.tsx'],
        setupFiles: 'tests/screens/settle.ts',
        environment: 'jsdom',
        pool: 'vmForks',
      }),
      inNode('serve'),
      inNode('lint'),
      inBrowser,
      inBrowserAlone,
      inFaults,
      // The browser's walks once more, each page on every tablet.
      { root: here('.'), test: { ...inBrowser.test, name: 'tablets', testTimeout: 600_000 } },
    ],
  },
});
