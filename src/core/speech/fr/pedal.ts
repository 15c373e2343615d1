import type * as english from '../words/pedal.ts';
import type { InTongue } from '../tongue.ts';

export const pedal: InTongue<typeof english.pedal> = {
  title: 'Pédale ou télé\u00adcommande',
  detail: 'Touchez-en un ici, puis la pédale.',
  care: 'Elle n’ouvre aucune barrière : brûlant, lame et machine restent à la main.',
  media: 'Touches du casque',
  mediaIs: { on: 'Oui', off: 'Non' },
  mediaDetail: 'Lecture : fait. Suivant : répéter. Retour : silence.',
  none: 'Rien d’appris',
  taught: 'Apprises : {count}',
  noKey: 'Aucune',
  does: {
    done: 'C’est fait',
    next: 'Réponse suivante',
    takeBack: 'Annuler cela',
    sayAgain: 'Répéter',
    longer: 'Encore combien de temps ?',
    hush: 'Silence',
  },
  ask: 'Appuyez une fois sur la pédale',
  for: 'Pour « {name} ».',
  refused: 'Cette touche écrit ou déplace. Essayez-en une autre.',
  forget: 'Pas de touche pour cela',
  byHand: 'Cela ne s’ouvre qu’à la main.',
};
