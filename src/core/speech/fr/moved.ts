import type * as english from '../words/moved.ts';
import type { InTongue } from '../tongue.ts';

export const movedBy: InTongue<typeof english.movedBy> = {
  temperature: { sooner: 'Plus chaud que prévu.', later: 'Plus froid que prévu.' },
  sign: { sooner: 'Plus avancé que prévu.', later: 'Plus lent que prévu.' },
  correction: { sooner: 'C’est corrigé.', later: 'C’est corrigé.' },
};

export const movedTo: InTongue<typeof english.movedTo> = {
  sooner: 'Environ {minutes} plus tôt, à voir à {time}.',
  later: 'Environ {minutes} plus tard, à voir à {time}.',
  readySooner: 'Environ {minutes} plus tôt, prêt vers {time}.',
  readyLater: 'Environ {minutes} plus tard, prêt vers {time}.',
};
