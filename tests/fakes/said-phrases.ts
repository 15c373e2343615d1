import type { EarEngine, EarPerson, Saying } from '../../src/core/ear/person.ts';
import { TAKES } from '../../src/core/ear/person.ts';
import type { EarPhrase } from '../../src/core/ear/phrases.ts';

const frames = (seed: number) => ({ count: 2, size: 2, data: Float32Array.of(seed, 1, 2, 3) });

/** One take as it was heard, and as it sounds in a louder kitchen. */
export const aTake = (engine: EarEngine = 'plain', seed = 0): readonly Saying[] =>
  [0, 1].map((n) => ({
    plain: frames(seed + n),
    learned: engine === 'learned' ? frames(seed + n) : null,
  }));

/** Somebody who has said these phrases. */
export const aPerson = (
  phrases: readonly EarPhrase[],
  { mark = 'star', child = false }: Partial<Pick<EarPerson, 'mark' | 'child'>> = {},
  engine: EarEngine = 'plain',
): EarPerson => ({
  id: mark,
  mark,
  child,
  sayings: Object.fromEntries(
    phrases.map((phrase) => [
      phrase,
      Array.from({ length: TAKES }, (_, n) => aTake(engine, n)).flat(),
    ]),
  ),
});
