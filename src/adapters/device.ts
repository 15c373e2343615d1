import type { Settings } from '../../machines/ports.ts';
import { randomId } from './ids.ts';

const NAME = 'device';

/**
 * This tablet's name for itself: made once, then kept in the settings. Where they cannot be read or
 * written it is made anew each time, so that two tablets never share one.
 */
export async function readDevice(settings: Settings): Promise<string> {
  try {
    const kept = await settings.get(NAME);
    if (typeof kept === 'string' && kept !== '') return kept;
  } catch {
    return randomId(); // unread is not unset: what is kept there must not be written over
  }
  const fresh = randomId();
  await settings.set(NAME, fresh).catch(() => {});
  return fresh;
}
