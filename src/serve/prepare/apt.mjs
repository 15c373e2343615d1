/** Waits for another package manager instead of failing at once. */
const PATIENT = ['-o', 'DPkg::Lock::Timeout=300'];

/**
 * Installs packages as Debian has them, and nothing they merely recommend.
 *
 * @param {(command: string, ...args: string[]) => boolean} run says whether it succeeded
 * @param {string[]} packages
 */
export function apt(run, ...packages) {
  run('apt-get', 'update');
  run('apt-get', ...PATIENT, 'install', '-y', '--no-install-recommends', ...packages);
}
