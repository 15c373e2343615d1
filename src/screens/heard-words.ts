import { DIGITS } from '../core/ear/phrases.ts';
import type { EarShown } from '../core/ear/shown.ts';
import { fill } from '../core/speech/fill.ts';
import { earBench } from '../core/speech/words/ear-bench.ts';
import { earPhrases } from '../core/speech/words/ear-kitchen.ts';

const LOST = ['denied', 'none', 'gone', 'failed'] as const;
type Lost = (typeof LOST)[number];

export const isLost = (state: EarShown['state']): state is Lost =>
  LOST.some((lost) => lost === state);

const wordsOf = ({ state, active: [first] }: EarShown): string => {
  if (isLost(state)) return earBench.lost[state];
  if (state === 'speaks') return earBench.speaks;
  if (state === 'tiles') return earBench.tiles;
  if (state !== 'open') return earBench.shut;
  return DIGITS.some((digit) => digit === first)
    ? earBench.digits
    : fill(earBench.say, { words: first ? earPhrases[first] : '' });
};

/**
 * What the ear does, and the likeliest that may be said now: the others stand on the presses beside it. `short`
 * is one word.
 */
export function heardWords(shown: EarShown): { readonly text: string; readonly short: string } {
  const { state } = shown;
  const { short } = earBench;
  const which =
    state === 'open' || state === 'speaks'
      ? 'open'
      : state === 'tiles'
        ? 'tiles'
        : isLost(state)
          ? 'lost'
          : 'shut';
  return { text: wordsOf(shown), short: short[which] };
}
