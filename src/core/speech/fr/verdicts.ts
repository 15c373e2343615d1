import type * as english from '../words/verdicts.ts';
import type { InTongue } from '../tongue.ts';

export const moreActs: InTongue<typeof english.moreActs> = {
  standOut: { label: 'Les sortir', then: 'ils tiédissent et lèvent' },
  flat: { label: 'Les cuire à plat', then: 'sur plaque huilée, maintenant' },
};

export const verdicts: InTongue<typeof english.verdicts> = {
  levain: {
    headline: 'Choisissez pour le levain',
    acts: {
      ready: { label: 'Il est mûr', then: 'puis gardez-en un peu' },
      notYet: { label: 'Pas encore', then: 'revoir plus tard' },
      over: { label: 'Trop mûr : à employer', then: 'puis gardez-en un peu' },
    },
    because: {
      ready: 'Il a doublé et il est bombé : mûr. Vous pouvez continuer.',
      notYet: 'Il lui faut du temps au chaud. Vous pouvez continuer quand même.',
      over: 'Il est creusé : employez-le dans l’heure. Attendre le rend plus aigre.',
      unsure:
        'Les signes se contredisent. Regardez encore bientôt, ou continuez si vos mains le disent.',
    },
  },
  bulk: {
    headline: 'Choisissez pour la pâte',
    acts: {
      ready: { label: 'Elle est prête', then: 'puis façonnez' },
      notYet: { label: 'Pas encore', then: 'revoir plus tard' },
      over: { label: 'Trop poussée', then: 'puis cuisez à plat' },
    },
    despite: 'Continuer quand même',
    because: {
      ready: 'Bombée, pleine de bulles, elle tremble : prête. Vous pouvez continuer.',
      notYet: 'Encore serrée : du temps ou du chaud. Vous pouvez continuer quand même.',
      over: 'Retombée, elle coule : cuisez à plat maintenant. Vous pouvez encore diviser.',
      unsure:
        'Les signes se contredisent. Regardez encore bientôt, ou continuez si vos mains le disent.',
    },
  },
  loaf: {
    headline: 'Choisissez pour les pains',
    acts: {
      ready: { label: 'Ils sont prêts', then: 'puis au four' },
      notYet: { label: 'Pas encore', then: 'revoir plus tard' },
      over: { label: 'Trop poussés', then: 'cuire froids, maintenant' },
    },
    because: {
      ready: 'Ils ont poussé et ils tremblent : prêts à cuire. Vous pouvez continuer.',
      notYet: 'Ils ont peu poussé : encore du froid. Vous pouvez continuer.',
      over: 'Au-dessus du bord : cuisez froid, maintenant, incision légère. Bien trop poussés : à plat.',
      unsure: 'Un creux à froid dit peu. Regardez encore bientôt, ou continuez.',
    },
  },
  warm: {
    headline: 'Choisissez pour les pains',
    acts: {
      ready: { label: 'Ils sont prêts', then: 'puis au four' },
      notYet: { label: 'Pas encore', then: 'revoir plus tard' },
      over: { label: 'Trop poussés', then: 'cuire, incision légère' },
    },
    because: {
      ready: 'Le creux revient lentement : prêts à cuire. Vous pouvez continuer.',
      notYet: 'Il revient d’un coup : du temps. Vous pouvez continuer quand même.',
      over: 'Le creux reste : cuisez maintenant, incision légère. Bien trop poussés : à plat.',
      unsure: 'Appuyez encore, ailleurs. Regardez encore bientôt, ou continuez.',
    },
  },
  poke: {
    headline: 'Choisissez pour ce pain',
    acts: {
      ready: { label: 'Il est prêt', then: 'puis au four' },
      notYet: { label: 'Pas encore', then: 'il reste un peu dehors' },
      over: { label: 'Trop poussé', then: 'cuire, incision légère' },
    },
    because: {
      ready: 'Il a poussé, le creux revient lentement : prêt. Vous pouvez continuer.',
      notYet: 'Pas encore : laissez-le un peu dehors. Vous pouvez continuer.',
      over: 'Le creux reste : cuisez-le froid, maintenant, incision légère.',
      unsure: 'Un creux à froid dit peu. Vous pouvez continuer.',
    },
  },
};

export const discardLevain: InTongue<typeof english.discardLevain> = {
  headline: 'Jetez ce levain',
  detail: 'Rose, orange ou moisi : pas pour le pain. Bocal lavé à chaud.',
  slab: { value: 'discard', label: 'Finir cette fournée' },
  then: 'repartez d’un levain-chef sain',
  spoken: 'Jetez ce levain. Rose, orange ou moisi, il n’est pas pour le pain.',
};

export const verdictsLines: InTongue<typeof english.verdictsLines> = {
  standOutBecause:
    'Peu poussés, et le creux revient d’un coup. Sortez-les, puis regardez. Vous pouvez continuer.',
  standOutFor:
    'Peu poussés, et le creux revient d’un coup. Sortez-les {minutes}, puis regardez. Vous pouvez continuer.',
  standThen: '{minutes}, puis regardez',
  standOnFor: 'Pas encore : laissez dehors {minutes}, puis regardez. Vous pouvez continuer.',
  readyForCold: 'Prête, et elle pousse encore au frigo : divisez à peu près maintenant.',
};
