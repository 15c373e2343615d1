import type { Speaker } from '../../machines/ports.ts';

/**
 * A speaker without a voice: it makes no sound, and the words are over at once. What is said is
 * still captioned, because captions come from whoever asks and not from here.
 */
export function makeSilentSpeaker(): Speaker {
  return { say: () => ({ over: Promise.resolve(), stop: () => {} }) };
}
