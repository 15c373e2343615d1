import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const PROGRAM = 'pocketsphinx_batch';
/** English sounds and words, where systems keep them. */
const MODELS = [
  '/usr/share/pocketsphinx/model/en-us',
  '/usr/local/share/pocketsphinx/model/en-us',
  '/opt/homebrew/share/pocketsphinx/model/en-us',
];

/**
 * What recognises speech, to test the voice with.
 *
 * @typedef {object} Recogniser
 * @property {string} program
 * @property {string} sounds its folder of sounds
 * @property {string} words its list of words and how they are pronounced
 */

/**
 * The system's own pocketsphinx with its English, or null where either is missing.
 *
 * @param {Record<string, string | undefined>} [env] the environment to read
 * @param {readonly string[]} [models] folders in which its English may be
 * @returns {Recogniser | null}
 */
export function findRecogniser(env = process.env, models = MODELS) {
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  const program = folders.map((folder) => join(folder, PROGRAM)).find((path) => existsSync(path));
  const model = models.find((folder) => existsSync(join(folder, 'en-us')));
  if (program === undefined || model === undefined) return null;
  return {
    program,
    sounds: join(model, 'en-us'),
    words: join(model, 'cmudict-en-us.dict'),
  };
}
