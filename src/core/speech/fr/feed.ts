import type * as english from '../words/feed.ts';
import type { InTongue } from '../tongue.ts';

export const feed: InTongue<typeof english.feed> = {
  ripe: 'mûr vers cette heure',
  ratio: 'rafraîchi {ratio}',
  another: 'Autre heure',
  planned: 'Vous mélangerez à une autre heure ? Dites-le avant de peser.',
  spoken: '{line}. Mûr vers {time}. Une autre heure ? Dites-le d’abord.',
  ask: 'Quand voulez-vous mélanger ?',
  earlier: 'Plus tôt',
  later: 'Plus tard',
  much: { earlier: '3 h plus tôt', later: '3 h plus tard' },
  stands: {
    early: 'Rafraîchi {ratio}, il n’est pas mûr à cette heure.',
    fits: 'Rafraîchi {ratio}, il est mûr à cette heure.',
    late: 'Rafraîchi {ratio}, il est trop mûr à cette heure.',
  },
  offer: 'Pour cette heure, rafraîchissez à {ratio} :',
  rough: 'Si loin de l’habitude, c’est une estimation grossière.',
  none: 'Rien n’est mûr à cette heure. Choisissez plus tard.',
  guess: 'Compté pour {celsius} dans la cuisine. Regardez-le quand même.',
  take: '{grams} de levain-chef : mis',
};
