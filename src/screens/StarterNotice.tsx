import type { JSX } from 'solid-js';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { Notice } from '../parts/Notice.tsx';
import type { House } from './house.ts';

/** The starter's reminder, on whatever screen: a sentence, and one press that leads to its feed. */
export function StarterNotice(props: {
  readonly house: House;
  readonly onSee: () => void;
}): JSX.Element {
  const text = (): string => {
    const { put } = props.house.kitchen().starter;
    if (put?.where === 'fridge') return words.due.cold;
    return put?.fresh ? words.due.ripe : words.due.unfed;
  };
  return <Notice text={text()} action={{ label: words.see, press: () => props.onSee() }} />;
}
