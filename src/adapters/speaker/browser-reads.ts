import type { Stop } from '../../../machines/ports.ts';
import { makeReadAloud, type ReadAloud } from './read-aloud.ts';

/** Reading aloud by this browser's own speech. */
export const browserReads = (later: (ms: number, then: () => void) => Stop): ReadAloud =>
  makeReadAloud({
    synth: window.speechSynthesis,
    utter: (text) => new SpeechSynthesisUtterance(text),
    later,
    languages: [...navigator.languages, document.documentElement.lang],
    atTouch: (then) => window.addEventListener('pointerup', then, { once: true, capture: true }),
    whenHidden(then) {
      const look = (): void => void (document.hidden && then());
      document.addEventListener('visibilitychange', look);
      look();
      return () => document.removeEventListener('visibilitychange', look);
    },
  });
