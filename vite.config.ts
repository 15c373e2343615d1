import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { VitePWA } from 'vite-plugin-pwa';
import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** assets/ is served as it is; the scripts that made its files stay behind. */
const leaveScriptsBehind = {
  name: 'leave-scripts-behind',
  apply: 'build' as const,
  closeBundle: () => rm(here('./dist/make'), { recursive: true, force: true }),
};

const inNode = (name: string, dir = name) => ({
  root: here('.'),
  test: {
    name,
    root: here('.'),
    include: [`tests/${dir}/**/*.test.ts`],
    environment: 'node' as const,
  },
});

export default defineConfig({
  root: 'src',
  publicDir: '../assets',
  cacheDir: '../node_modules/.vite',
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0 },
  plugins: [
    solid(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      workbox: { globPatterns: ['**/*.{html,js,css,woff2,svg,png,json,webmanifest,mp3,wav}'] },
    }),
    leaveScriptsBehind,
  ],
  test: {
    projects: [
      inNode('core'),
      inNode('machines'),
      inNode('truth'),
      {
        plugins: [solid()],
        root: here('.'),
        test: {
          name: 'dom',
          root: here('.'),
          include: ['tests/{screens,adapters,app}/**/*.test.{ts,tsx}'],
          environment: 'jsdom',
        },
      },
      inNode('browser'),
      inNode('faults'),
    ],
  },
});
