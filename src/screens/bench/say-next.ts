import { createEffect, on, type Accessor } from 'solid-js';
import { sayFor } from '../bake-name.ts';
import type { House } from '../house.ts';
import type { BenchView } from './view.ts';

interface Said {
  readonly house: House;
  readonly bake: Accessor<string>;
  /** Which act it is: another one speaks for itself. */
  readonly key: Accessor<string | null>;
  readonly view: Accessor<BenchView | null>;
}

/**
 * Has the next line of a list said as the last one is answered, with its bake's name where more than one
 * runs. Gives whether such words stand as the headline already.
 */
export function sayNext({ house, bake, key, view }: Said): (words: string) => boolean {
  const named = (words: string): string =>
    sayFor(house.kitchen(), view()?.bake ?? bake(), words, (at) => house.hour(at));
  createEffect(
    on([key, view], ([at, next], before) => {
      const [was, last] = before ?? [];
      if (!before || was !== at || last?.headline === next?.headline) return;
      house.say(named([last?.progress && next?.closing, next?.spoken].filter(Boolean).join(' ')));
    }),
  );
  return (words) => {
    const headline = view()?.headline ?? '';
    return words === headline || words === named(headline).replace('\u00a0', ' ');
  };
}
