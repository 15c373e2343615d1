import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';

const last = ({ standing }: Kitchen, who: string, acts: readonly string[]): string | null => {
  const found = standing.findLast(
    (fact) => fact.kind === 'press' && fact.who === who && acts.includes(fact.act),
  );
  return found?.kind === 'press' ? found.act : null;
};

/** Whether the loaves of a bake were called over at their last look: nothing waits for them any more. */
export const loavesOver = (kitchen: Kitchen, bake: string): boolean =>
  last(kitchen, bake, ['loafReady', 'loafNotYet', 'loafOver', 'standOut']) === 'loafOver';

/** The same of the load at the oven, which is looked at once more there. */
export const loadOver = (kitchen: Kitchen, bake: string): boolean =>
  loavesOver(kitchen, bake) ||
  last(kitchen, 'oven', ['pokeReady', 'pokeNotYet', 'pokeOver']) === 'pokeOver';
