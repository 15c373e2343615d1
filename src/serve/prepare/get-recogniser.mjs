import { apt } from './apt.mjs';

/** @typedef {import('./find-recogniser.mjs').Recogniser} Recogniser */

/**
 * What getting a recogniser needs of the world.
 *
 * @typedef {object} World
 * @property {() => Recogniser | null} find
 * @property {boolean} canApt whether this is root on a system with apt-get
 * @property {(command: string, ...args: string[]) => boolean} run says whether it succeeded
 * @property {(sentence: string) => void} say
 */

/**
 * Finds what the spoken clips are recognised with, or installs it by apt where that is allowed.
 *
 * @param {World} world
 * @returns {Recogniser | null} null after saying what to do
 */
export function getRecogniser({ find, canApt, run, say }) {
  const found = find();
  if (found) return found;
  if (canApt) {
    say('There is no pocketsphinx to hear the voice with: installing it with apt-get.');
    apt(run, 'pocketsphinx', 'pocketsphinx-en-us');
    const installed = find();
    if (installed) return installed;
  }
  say(
    'No pocketsphinx was found and none could be installed: whether the voice is understood is not ' +
      'tested in this run, and the count says so. On Debian: apt-get install pocketsphinx pocketsphinx-en-us.',
  );
  return null;
}
