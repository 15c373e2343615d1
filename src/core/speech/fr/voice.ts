import type * as english from '../words/voice.ts';
import type { InTongue } from '../tongue.ts';

export const voiceWords: InTongue<typeof english.voiceWords> = {
  title: 'La voix',
  detail: 'Aucun son ne dit vos propres noms : la tablette peut les lire.',
  own: 'Lire mes mots à voix haute',
  ownOn: 'Oui : sans aucun réseau',
  ownOff: 'Non',
  slower: 'Parler plus lentement',
  slowerIs: { grown: 'Non', small: 'Oui' },
  asking: 'Recherche de la voix de la tablette…',
  none: 'Cette tablette n’a pas de voix à elle. Mis sur oui, cela ne fait rien.',
};
