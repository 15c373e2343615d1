import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The programs that speak to the ear when it is tested. */
export const VOICES = ['espeak-ng', 'flite'];

/**
 * Whether the system has all of them.
 *
 * @param {Record<string, string | undefined>} [env] the environment to read
 */
export function hasVoices(env = process.env) {
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  return VOICES.every((name) => folders.some((folder) => existsSync(join(folder, name))));
}
