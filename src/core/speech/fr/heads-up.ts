import type * as english from '../words/heads-up.ts';
import type { InTongue } from '../tongue.ts';

export const headsUp: InTongue<typeof english.headsUp> = {
  lidded: 'Dans une minute, on ôte le couvercle de {pot}.',
  steaming: 'Dans une minute, la vapeur sort.',
};
