import type { VoiceRows } from '../../../machines/ear-port.ts';
import { makeVoiceStore } from './voice-store.ts';

/** Rows that last as long as the page. */
function makePassingRows(): VoiceRows {
  const kept = new Map<string, unknown>();
  return {
    load: () => Promise.resolve(new Map(kept)),
    write(rows) {
      for (const [key, row] of rows) {
        if (row === null) kept.delete(key);
        else kept.set(key, row);
      }
      return Promise.resolve();
    },
  };
}

/** @param earnest false in a rehearsal: a voice that is learned there passes with the page */
export const openVoiceRows = (earnest: boolean): VoiceRows =>
  earnest ? makeVoiceStore() : makePassingRows();
