import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
} from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { withLock } from '../../../src/serve/prepare/with-lock.mjs';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const builds = join(root, 'node_modules/.cache/loafward/builds');

/** What a build is made of. */
const SOURCES = ['src', 'machines', 'assets', 'vite.config.ts', 'package-lock.json'];

/** How many builds are kept: one that another run still reads is not among the older ones. */
const KEPT = 6;

function hashOfSources(): string {
  const hash = createHash('sha256');
  for (const source of SOURCES) {
    const path = join(root, source);
    const names = statSync(path).isDirectory()
      ? readdirSync(path, { recursive: true, withFileTypes: true })
          .filter((entry) => entry.isFile())
          .map((entry) => join(entry.parentPath, entry.name))
          .sort()
      : [path];
    for (const name of names) hash.update(name.slice(root.length)).update(readFileSync(name));
  }
  return hash.digest('hex').slice(0, 24);
}

/** Runs vite as `npm run build` does, apart from the folder. Throws what it printed. */
function build(dir: string): void {
  // A test runner's surroundings would make it another build.
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(VITEST|NODE_ENV|TEST$|VITE_)/.test(name)),
  );
  const args = ['build', '--logLevel', 'warn', '--outDir', dir, '--emptyOutDir'];
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const { status, stdout, stderr } = spawnSync(process.execPath, [vite, ...args], {
    cwd: root,
    env,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The app could not be built.\n${stdout}${stderr}`);
}

/**
 * The folder of a build of the sources as they are now. It is named for their content and never
 * changes: built when there is none yet, whole or not at all, and safe beside other runs.
 *
 * @throws what the build printed, when it fails
 */
export async function builtSite(): Promise<string> {
  await mkdir(builds, { recursive: true });
  return withLock(join(builds, 'lock'), () => {
    const dir = join(builds, hashOfSources());
    if (!existsSync(dir)) {
      build(`${dir}.half`);
      renameSync(`${dir}.half`, dir);
    }
    utimesSync(dir, new Date(), new Date());
    const newestFirst = readdirSync(builds)
      .filter((name) => name !== 'lock')
      .map((name) => join(builds, name))
      .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
    for (const old of newestFirst.slice(KEPT)) rmSync(old, { recursive: true, force: true });
    return dir;
  });
}
