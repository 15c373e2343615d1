import type * as english from '../words/leapt.ts';
import type { InTongue } from '../tongue.ts';

export const leapt: InTongue<typeof english.leapt> = {
  back: 'L’heure de la tablette a reculé de {minutes}. Chaque attente continue comme avant.',
  ahead: 'L’heure de la tablette a sauté de {minutes}. Réglée, ou endormie ?',
  which: 'Dire laquelle',
  beside: { back: 'L’heure a reculé', ahead: 'L’heure a avancé' },
  askMore: 'L’heure a-t-elle été réglée ?',
  title: 'L’heure a avancé de {minutes}',
  backTitle: 'L’heure a reculé de {minutes}',
  backThen: 'Chaque attente continue comme avant.',
  backHours: 'Les heures ici suivent l’horloge : vérifiez qu’elle est juste.',
  slept: 'Elle dormait',
  sleptThen: 'Endormie : les heures ont passé. Toutes les heures ici sont justes.',
  set: 'Elle a été réglée',
  setThen: 'Réglée : aucun temps n’a passé. Chaque attente gagne {minutes}.',
  said: 'Chaque attente s’allonge d’autant. Vérifiez la pâte.',
};
