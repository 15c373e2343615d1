import type { House } from '../screens/house.ts';
import type { HalfParts } from './half-typed.ts';

/** What is half typed, known right after the first paint: nobody has typed before it. */
export function laterHalf(...parts: HalfParts): House['half'] {
  let half: House['half'] | undefined;
  void import('./half-typed.ts').then(({ makeHalfTyped }) => {
    half = makeHalfTyped(...parts);
  });
  return (question) => ({
    read: () => half?.(question).read() ?? '',
    keep: (text) => half?.(question).keep(text),
  });
}
