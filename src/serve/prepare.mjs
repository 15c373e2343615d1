/**
 * Runs before `npm start` and `npm test`, on a fresh clone too, and so with what Node brings along
 * alone: checks Node, installs the packages, and with `--browser` finds or installs a Chromium,
 * what its voice is recognised with, and the voices that its ear listens to.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkNode } from './prepare/check-node.mjs';
import { findBrowser } from './prepare/find-browser.mjs';
import { findRecogniser } from './prepare/find-recogniser.mjs';
import { hasVoices } from './prepare/find-voices.mjs';
import { getBrowser } from './prepare/get-browser.mjs';
import { getRecogniser } from './prepare/get-recogniser.mjs';
import { getVoices } from './prepare/get-voices.mjs';
import { install } from './prepare/install.mjs';
import { withLock } from './prepare/with-lock.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** @param {string} sentence */
const say = (sentence) => console.error(sentence);

/**
 * @param {string} command
 * @param {string[]} args
 */
function run(command, ...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, args, { cwd: root, env, stdio: 'inherit' }).status === 0;
}

/**
 * The npm that runs this script, else the one on the PATH.
 *
 * @param {string[]} args
 */
function npm(...args) {
  const program = process.env.npm_execpath;
  if (program && /npm-cli\.js$/.test(program)) return run(process.execPath, program, ...args);
  if (process.platform !== 'win32') return run('npm', ...args);
  return (
    spawnSync(`npm.cmd ${args.join(' ')}`, { cwd: root, shell: true, stdio: 'inherit' }).status ===
    0
  );
}

/** @returns {Promise<number>} the exit code */
async function prepare() {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const trouble = checkNode(process.versions.node, engines.node);
  if (trouble) {
    say(trouble);
    return 1;
  }
  if (!install(root, npm)) {
    say('The packages could not be installed: read what npm says above. Is there a network?');
    return 1;
  }
  if (process.argv.includes('--browser')) {
    const canApt = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
    // A missing browser is said, not fatal: the other tests run, and those in a browser fail.
    const chosen = process.env.CHROME_PATH;
    await getBrowser({ find: () => findBrowser(), chosen, canApt, run, say });
    getRecogniser({ find: () => findRecogniser(), canApt, run, say });
    getVoices({ has: () => hasVoices(), canApt, run, say });
  }
  return 0;
}

process.exitCode = await withLock(join(root, '.prepare.lock'), prepare, () =>
  say('Another run is preparing this folder (.prepare.lock); waiting for it.'),
);
