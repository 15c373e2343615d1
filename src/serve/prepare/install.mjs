import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * What an installation depends on: the lockfile, and the system its binaries are for.
 *
 * @param {string} root
 */
function stampOf(root) {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const hash = createHash('sha256').update(lock).digest('hex');
  return `${hash} ${process.platform}-${process.arch} node-${process.versions.modules}\n`;
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean }>}
 */
const packagesOf = (file) => JSON.parse(readFileSync(file, 'utf8')).packages ?? {};

/**
 * Whether npm's own list of what it installed agrees with the lockfile: then somebody ran npm by
 * hand, and there is nothing to do.
 *
 * @param {string} root
 */
function isInstalled(root) {
  const list = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(list)) return false;
  const have = packagesOf(list);
  return Object.entries(packagesOf(join(root, 'package-lock.json'))).every(
    ([path, { version, optional }]) =>
      path === '' ||
      (have[path]?.version === version && existsSync(join(root, path))) ||
      (optional === true && !(path in have)),
  );
}

/**
 * Brings node_modules in line with the lockfile, and does nothing when it is.
 *
 * @param {string} root the project's folder
 * @param {(...args: string[]) => boolean} npm runs npm there, says whether it succeeded
 * @returns {boolean} whether everything is installed now
 */
export function install(root, npm) {
  const stamp = join(root, 'node_modules/.loafward-stamp');
  const stamped = existsSync(stamp) ? readFileSync(stamp, 'utf8') : null;
  if (stamped === stampOf(root)) return true;
  // Another system's stamp: the folder was carried over, with binaries that don't run here.
  const carried = stamped !== null && stamped.slice(64) !== stampOf(root).slice(64);
  const done =
    (!carried && isInstalled(root)) ||
    npm('ci', '--include=dev') ||
    npm('install', '--include=dev');
  if (done) writeFileSync(stamp, stampOf(root));
  return done;
}
