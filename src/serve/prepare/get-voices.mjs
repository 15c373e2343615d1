import { apt } from './apt.mjs';
import { VOICES } from './find-voices.mjs';

/**
 * What getting the voices needs of the world.
 *
 * @typedef {object} World
 * @property {() => boolean} has
 * @property {boolean} canApt whether this is root on a system with apt-get
 * @property {(command: string, ...args: string[]) => boolean} run says whether it succeeded
 * @property {(sentence: string) => void} say
 */

/**
 * Sees that there are made voices for the ear to listen to, or installs them by apt where that is allowed.
 *
 * @param {World} world
 * @returns {boolean} false after saying what to do
 */
export function getVoices({ has, canApt, run, say }) {
  if (has()) return true;
  if (canApt) {
    say('There are no espeak-ng and flite to speak to the ear: installing them with apt-get.');
    apt(run, ...VOICES);
    if (has()) return true;
  }
  say(
    'No espeak-ng and flite were found and they could not be installed: whether the ear understands a voice ' +
      'is not tested in this run, and the count says so. On Debian: apt-get install espeak-ng flite.',
  );
  return false;
}
