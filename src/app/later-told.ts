import { createSignal } from 'solid-js';
import type { House } from '../screens/house.ts';
import type { ToldParts } from './told.ts';

/** What there is to tell comes right after the first paint, its words with it. */
export function laterTold(parts: ToldParts) {
  const [told, setTold] = createSignal<House['told']>(() => []);
  const telling = import('./told.ts').then(({ makeTold, troubles }) => {
    const made = makeTold(parts);
    setTold(() => made.told);
    return { ...made, troubles };
  });
  return {
    told: (() => told()()) satisfies House['told'],
    tell: ((notice) => void telling.then((it) => it.tell(notice))) satisfies House['tell'],
    /** The sentences of trouble. */
    troubles: () => telling.then((it) => it.troubles),
  };
}
