import { type JSX } from 'solid-js';
import { DIGITS, type EarPhrase } from '../../../core/ear/phrases.ts';
import type { Sketch as Name } from '../../../core/sketches/sketches.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { Sketch } from '../../../parts/Sketch.tsx';

/** Phrases that tell of something that is drawn. */
const DRAWN: Readonly<Partial<Record<EarPhrase, Name>>> = {
  longer: 'coverAndWait',
  reading: 'probe',
  ready: 'domeEdge',
  done: 'done',
  lidOff: 'liftLid',
  springs: 'pokeSpringsBack',
  slowly: 'pokeSlow',
  stays: 'pokeStays',
};

/** What a phrase is about: drawn, or the digit's own sign; none where neither would tell. */
export function phrasePicture(phrase: EarPhrase): JSX.Element {
  const digit = DIGITS.findIndex((one) => one === phrase);
  if (digit >= 0)
    return (
      <b class="ear-digit" aria-hidden="true">
        {phrase === 'point' ? bench.point : digit}
      </b>
    );
  const name = DRAWN[phrase];
  return name && <Sketch name={name} />;
}
