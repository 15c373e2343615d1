import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** Names a Chromium goes by on a PATH, the plainest first. */
const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Where it is installed on systems that keep programs off the PATH. */
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser that `playwright-core install chromium` fetched, or null. */
async function fetched() {
  // By its file, so that this module loads before anything is installed.
  const root = fileURLToPath(new URL('../../../', import.meta.url));
  const library = join(root, 'node_modules/playwright-core/index.mjs');
  if (!existsSync(library)) return null;
  const { chromium } = await import(pathToFileURL(library).href);
  const path = chromium.executablePath();
  return existsSync(path) ? path : null;
}

/**
 * A Chromium to test with: CHROME_PATH when it is set (and then nothing else), the system's own,
 * or one that playwright-core fetched.
 *
 * @param {Record<string, string | undefined>} [env] the environment to read
 * @returns {Promise<string | null>} the path of the program, or null where there is none
 */
export async function findBrowser(env = process.env) {
  if (env.CHROME_PATH) return existsSync(env.CHROME_PATH) ? env.CHROME_PATH : null;
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  const found = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)))
    .concat(PLACES)
    .find((path) => existsSync(path));
  return found ?? (await fetched());
}
