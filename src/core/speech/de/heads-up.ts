import type * as english from '../words/heads-up.ts';
import type { InTongue } from '../tongue.ts';

export const headsUp: InTongue<typeof english.headsUp> = {
  lidded: 'In einer Minute kommt der Deckel ab: {pot}.',
  steaming: 'In einer Minute kommt der Dampf heraus.',
};
