import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const packages = fileURLToPath(new URL('../../node_modules/', import.meta.url));

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
  if (!file) throw new Error(`${name} brings no licence that could be shipped with it.`);
  // A build tool's file goes on with the licences of what it bundles for itself.
  const [text = ''] = readFileSync(join(dir, file), 'utf8').split(/^# Licenses of bundled/m);
  return `${name} ${version}\n\n${text.trim()}\n`;
}

/** Puts the licences of everything that is in the build beside it, as /licences.txt. */
export function shipLicences(): Plugin {
  return {
    name: 'ship-licences',
    apply: 'build',
    generateBundle(_, bundle) {
      // Fonts come in through style sheets, as files and not as modules.
      const files = Object.values(bundle).flatMap((part) =>
        part.type === 'asset' ? part.originalFileNames : [],
      );
      const names = new Set(WRITTEN_IN);
      for (const module of [...this.getModuleIds(), ...files]) {
        const name = packageOf(`/${module.split('?')[0] ?? ''}`);
        if (name) names.add(name);
      }
      const source = [...names]
        .sort()
        .map(noticeOf)
        .join(`\n${'-'.repeat(80)}\n\n`);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
}
