import { apt } from './apt.mjs';

/**
 * What getting a browser needs of the world.
 *
 * @typedef {object} World
 * @property {() => Promise<string | null>} find
 * @property {string | undefined} chosen CHROME_PATH
 * @property {boolean} canApt whether this is root on a system with apt-get
 * @property {(command: string, ...args: string[]) => boolean} run says whether it succeeded
 * @property {(sentence: string) => void} say
 */

/**
 * Finds a Chromium, or installs one: by apt where that is allowed, else by playwright-core.
 *
 * @param {World} world
 * @returns {Promise<string | null>} its path, or null after saying what to do
 */
export async function getBrowser({ find, chosen, canApt, run, say }) {
  const found = await find();
  if (found) return found;
  if (chosen) {
    say(`CHROME_PATH is ${chosen}, and there is no such file. Mend it, or unset it.`);
    return null;
  }
  if (canApt) {
    say('There is no Chromium to test with: installing it with apt-get.');
    apt(run, 'chromium');
    const installed = await find();
    if (installed) return installed;
  }
  say('There is no Chromium to test with: fetching one with playwright-core.');
  run(process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium');
  const fetched = await find();
  if (!fetched)
    say(
      'No Chromium was found and none could be installed. Install Chromium or Google Chrome, or ' +
        'set CHROME_PATH to one. Until then the tests in a browser fail.',
    );
  return fetched;
}
