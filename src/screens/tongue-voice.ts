import { createSignal, type Accessor } from 'solid-js';
import { tongue } from '../core/speech/tongue.ts';
import { tongueVoice } from '../core/speech/words/ways.ts';
import type { House } from './house.ts';

/** Who speaks the tongue that stands, in words; null in English, whose clips are here, and until it is known. */
export function tongueVoiceOf(house: Pick<House, 'reads'>): Accessor<string | null> {
  const [words, setWords] = createSignal<string | null>(null);
  const other = tongue();
  if (other !== 'en')
    void house.reads(other).then((has) => setWords(has ? tongueVoice.own : tongueVoice.none));
  return words;
}
