import type { Baker } from './baker.ts';
import { WHOLE_BAKE } from './whole-bake.ts';

/** On the way of a whole bake, from one of its states up to another. */
export const walkOn = async (baker: Baker, from: string, to: string): Promise<void> => {
  const at = (state: string) => WHOLE_BAKE.findIndex(({ name }) => name === state);
  for (const { go } of WHOLE_BAKE.slice(at(from), at(to))) await go(baker);
};
