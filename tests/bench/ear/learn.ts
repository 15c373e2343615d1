import type { SayingEngine } from '../../../src/adapters/ear/engine.ts';
import type { Cut } from '../../../src/core/ear/listener.ts';
import { louder } from '../../../src/core/ear/louder.ts';
import type { EarPerson, Saying } from '../../../src/core/ear/person.ts';
import type { EarPhrase } from '../../../src/core/ear/phrases.ts';

/** A take as it is kept: as it was heard, and as it sounds in a louder kitchen. */
export const bothWays = (engine: SayingEngine, cut: Cut, seed: number): Promise<Saying[]> =>
  Promise.all([engine.saying(cut), engine.saying({ ...cut, sound: louder(cut.sound, seed) })]);

/** Somebody whose phrases were heard. */
export async function learnPerson(
  engine: SayingEngine,
  id: string,
  takes: ReadonlyMap<EarPhrase, readonly Cut[]>,
): Promise<EarPerson> {
  const sayings: Partial<Record<EarPhrase, readonly Saying[]>> = {};
  for (const [phrase, cuts] of takes) {
    const both = await Promise.all(cuts.map((cut, n) => bothWays(engine, cut, n + 1)));
    sayings[phrase] = both.flat();
  }
  return { id, mark: 'sun', child: false, sayings };
}
