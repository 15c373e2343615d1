import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin, Rolldown } from 'vite';

const packages = fileURLToPath(new URL('../../node_modules/', import.meta.url));

/** The texts of packages that bring none, each as where it comes from has it. */
const texts = fileURLToPath(new URL('licences/', import.meta.url));

/** What the build writes itself into what is shipped: no module of the app names it. */
const WRITTEN_IN = ['vite', 'workbox-build'];

/** The package a module belongs to; null for our own. */
const packageOf = (module: string) =>
  /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(module)?.[1] ?? null;

/** A package's name, version and licence in full. Throws where it brings none. */
function noticeOf(name: string): string {
  const dir = join(packages, name);
  const { version } = JSON.parse(readFileSync(join(dir, 'package.json'), 'utf8')) as {
    version: string;
  };
  const file = readdirSync(dir).find((entry) => /^licen[cs]e/i.test(entry));
  const path = file ? join(dir, file) : join(texts, `${name}.txt`);
  if (!existsSync(path))
    throw new Error(`${name} brings no licence that could be shipped with it.`);
  // A build tool's file goes on with the licences of what it bundles for itself.
  const [text = ''] = readFileSync(path, 'utf8').split(/^# Licenses of bundled/m);
  return `${name} ${version}\n\n${text.trim()}\n`;
}

/** What threads are built of: a build of their own, before that of the page is over. */
const inThreads = new Set<string>();

/** The packages of everything that is in a bundle. */
function packagesIn(modules: Iterable<string>, bundle: Rolldown.OutputBundle): string[] {
  // Fonts and nets come in as files and not as modules.
  const files = Object.values(bundle).flatMap((part) =>
    part.type === 'asset' ? part.originalFileNames : [],
  );
  return [...modules, ...files].flatMap((module) => {
    const name = packageOf(`/${module.split('?')[0] ?? ''}`);
    return name ? [name] : [];
  });
}

/** Has what a thread is built of known to `shipLicences`. */
export const noteLicences = (): Plugin => ({
  name: 'note-licences',
  apply: 'build',
  generateBundle(_, bundle) {
    for (const name of packagesIn(this.getModuleIds(), bundle)) inThreads.add(name);
  },
});

/** Puts the licences of everything that is in the build beside it, as /licences.txt. */
export function shipLicences(): Plugin {
  return {
    name: 'ship-licences',
    apply: 'build',
    generateBundle(_, bundle) {
      const names = [...WRITTEN_IN, ...inThreads, ...packagesIn(this.getModuleIds(), bundle)];
      const source = [...new Set(names)]
        .sort()
        .map(noticeOf)
        .join(`\n${'-'.repeat(80)}\n\n`);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
}
