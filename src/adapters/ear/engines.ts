import type { EarEngine } from '../../core/ear/person.ts';
import type { SayingEngine } from './engine.ts';
import { learnedEngine, type Nets } from './learned-engine.ts';
import { plainEngine } from './plain-engine.ts';

/**
 * What makes numbers of a saying, by its name. The nets are opened when they are first wanted, and once;
 * null where they cannot be had now, and asked for again then.
 */
export function makeEngines(
  nets: () => Promise<Nets>,
): (which: EarEngine) => Promise<SayingEngine | null> {
  let learned: Promise<SayingEngine | null> | null = null;
  return (which) => {
    if (which === 'plain') return Promise.resolve(plainEngine);
    return (learned ??= nets().then(learnedEngine, () => (learned = null)));
  };
}
