import type * as english from '../words/door.ts';
import type { InTongue } from '../tongue.ts';

export const doorWords: InTongue<typeof english.doorWords> = {
  bakeFirst: { label: 'Cuire celui-ci d’abord', then: 'froid, incision légère' },
  flat: { label: 'Le cuire à plat', then: 'sur plaque huilée, maintenant' },
  goesLast: { label: 'Pas encore', then: 'il passe en dernier' },
};

export const doorBecause: InTongue<typeof english.doorBecause> = {
  goesLast: 'Pas encore : il passe en dernier.',
  ready: 'Prêt d’après ses signes. Cuisez-le maintenant.',
  byClock: 'Prêt d’après l’heure. Cuisez-le maintenant.',
  coldDent: 'Un creux à froid dit peu. Cuisez-le maintenant.',
  disagree: 'Signes et heure se contredisent. Cuisez-le maintenant.',
  unsure: 'Aucun signe ne dit d’attendre : cuisez-le maintenant.',
  bakeFirst: 'Il arrive au bout. Cuisez-le avant les autres.',
  bakeSoon: 'Il arrive au bout : cuisez-le maintenant.',
  switchGoal: 'Trop poussé, d’après signes et heure. Bien trop : à plat.',
};
