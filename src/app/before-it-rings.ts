import { createSignal } from 'solid-js';
import { loadJudge } from './load-judge.ts';
import type { Unheard, UnheardParts } from './unheard.ts';

/** Has here what is needed as soon as something rings, or is hushed: it is not fetched only then. */
export function beforeItRings(voice: { fetch(): Promise<unknown> }, parts: UnheardParts): Unheard {
  const [unheard, setUnheard] = createSignal<Unheard | null>(null);
  parts.world.later(0, () => {
    void Promise.all([loadJudge(), import('./course.ts'), import('./say-aloud.ts'), voice.fetch()]);
    void import('./unheard.ts').then(({ makeUnheard }) => setUnheard(makeUnheard(parts)));
  });
  return {
    waits: () => unheard()?.waits() === true,
    touch: () => unheard()?.touch() === true,
  };
}
