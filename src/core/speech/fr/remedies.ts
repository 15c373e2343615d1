import type * as english from '../words/remedies.ts';
import type { InTongue } from '../tongue.ts';
import { MITTS, RAW_DOUGH } from './care.ts';

export const remedies: InTongue<typeof english.remedies> = {
  levain: {
    slow: {
      sign: 'Lève peu, dessus plat',
      now: 'Au chaud, attendez une à quatre heures. Mélangez plus tard.',
      next: 'Rafraîchissez deux fois après le frigo. Plus au chaud.',
    },
    past: {
      sign: 'Creusé, aigre, coulant',
      now: 'À peine creusé : employez-le. Depuis longtemps : rafraîchissez d’abord.',
      next: 'Moins de levain-chef au rafraîchi, ou plus au frais.',
    },
  },
  mix: {
    soupy: {
      sign: 'Pâte liquide',
      now: 'Repos 20 minutes, puis un rabat. Ni eau, ni farine en plus.',
      next: 'Gardez 15 % de l’eau de côté.',
    },
    cold: {
      sign: 'Pâte trop froide',
      now: 'Mettez-la au chaud. Un bassinage chaud aide peu.',
      next: 'Mesurez farine et pièce, puis réglez l’eau.',
    },
    hot: {
      sign: 'Pâte trop chaude',
      now: 'Mettez-la dans une pièce fraîche. Un bassinage froid aide peu.',
      next: 'Mesurez farine et pièce, puis réglez l’eau.',
    },
    noSalt: {
      sign: 'Pas de sel dedans',
      now: 'Mouillez le sel, incorporez, deux rabats. Elle a levé vite.',
      next: 'Dites-le tout haut quand le sel est mis.',
      care: RAW_DOUGH,
    },
  },
  folds: {
    tears: {
      sign: 'Se déchire, se rétracte',
      now: 'Arrêtez. Repos 15 à 30 minutes.',
      next: 'Tirez moins, reposez plus entre deux.',
    },
  },
  bulk: {
    flat: {
      sign: 'Bord plat, sans bulles',
      now: 'Attendez, ou réchauffez. Regardez encore dans 45 à 60 minutes.',
      next: 'Une pâte plus chaude, ou plus de levain.',
    },
    ready: {
      sign: 'Bombée, tremble, bulles',
      now: 'Divisez maintenant. Plus tôt encore s’il fait chaud.',
      next: 'Notez jusqu’où elle a levé.',
    },
    fallen: {
      sign: 'Retombée, collante, acide',
      now: 'Cuisez en moule, ou à plat sur plaque, maintenant.',
      next: 'Arrêtez le pointage plus tôt, ou plus au frais.',
      care: 'Garnitures qui se gâtent : c’est le temps qui compte, pas l’aspect. Suivez vos règles locales.',
    },
  },
  sheet: {
    rips: {
      sign: 'La pâte étirée se déchire',
      now: 'Arrêtez, pliez sur le trou, reposez. Ne garnissez que le reste.',
      next: 'Étirez après un ou deux rabats. Mouillez le plan.',
    },
    wet: {
      sign: 'Garniture mouillée, glisse',
      now: 'Épongez, mettez-en moins, éparpillez. Un rabat de plus.',
      next: 'Égouttez, séchez, refroidissez. Restez à 10 à 20 %.',
    },
  },
  divide: {
    lumpy: {
      sign: 'Bosses, beaucoup de restes',
      now: 'Cachez les restes dedans. Boulez, puis reposez.',
      next: 'Coupez chaque pâton en deux coups.',
    },
  },
  preshape: {
    splits: {
      sign: 'La peau se fend',
      now: 'Repos 10 à 15 minutes de plus, soudure dessous.',
      next: 'Boulez moins serré.',
    },
    runs: {
      sign: 'S’étale à plat',
      now: 'Reboulez, court repos. S’il coule encore : un moule.',
      next: 'Plus de rabats, moins d’eau, ou façonner plus tôt. Changez-en un.',
    },
  },
  basket: {
    stuck: {
      sign: 'Colle au banneton',
      now: 'Au froid 15 à 20 minutes. Décollez avec une corne.',
      next: 'Farine de riz, banneton sec, ou un tissu.',
    },
  },
  cold: {
    still: {
      sign: 'N’a pas poussé',
      now: 'Laissez dehors 60 à 120 minutes, puis cuisez.',
      next: 'Arrêtez le pointage plus tard, ou moins de froid.',
    },
    over: {
      sign: 'Au bord, tremblant',
      now: 'Cuisez froid, maintenant. Incision légère, en cocotte.',
      next: 'Au froid plus tôt, à {fridgeHeat} au plus. Moins à la fois.',
      care: `Pas de pâte froide dans la terre ou l’émail chauds. ${MITTS}`,
    },
  },
  proof: {
    far: {
      sign: 'Trop poussé, mais élastique',
      now: 'Façonnez encore. Surveillez 20 à 45 minutes.',
      next: 'Regardez plus tôt.',
    },
  },
  oven: {
    burst: {
      sign: 'Déchirure sur le côté',
      now: 'Laissez cuire. Il est bon ainsi.',
      next: 'Apprêt plus long, ou peau moins serrée, soudure dessous. Changez-en un.',
    },
    flat: {
      sign: 'Plat, sans grigne',
      now: 'Cuisez jusqu’au bout.',
      next: 'Une pousse plus courte.',
    },
    black: {
      sign: 'Dessous noir',
      now: 'Hors de la cocotte. Les 5 à 10 dernières minutes sur grille.',
      next: 'Grille plus haut, papier cuisson, et une plaque dessous.',
      care: MITTS,
    },
    pale: {
      sign: 'Croûte pâle',
      now: 'Sans couvercle, 5 à 10 minutes de plus.',
      next: 'Four plus chaud, couvercle ôté plus tôt, ou pousse plus courte. Changez-en un.',
      care: MITTS,
    },
    dark: {
      sign: 'Croûte trop foncée, dure',
      now: 'Couvrez sans serrer. Baissez un peu le four.',
      next: 'Avec fruits ou fromage, faites des pains plus petits.',
      care: MITTS,
    },
    leaks: {
      sign: 'La garniture coule et brûle',
      now: 'Papier cuisson dessous. Laissez refroidir, puis ôtez le brûlé en plein air.',
      next: 'Laissez 2 à 3 cm de bord. Gros morceaux froids au centre.',
      care: `La garniture fondue brûle : laissez refroidir. ${MITTS}`,
    },
  },
  cool: {
    crackles: {
      sign: 'Crépite, fines fentes',
      now: 'Rien à faire : la croûte chante en refroidissant.',
      next: null,
    },
  },
  cut: {
    gummy: {
      sign: 'Mie collante',
      now: 'Encore tiède : 10 minutes au four. Froid : grillez-le.',
      next: 'Cuisez jusqu’à {crumbHeat} et doré. Puis laissez refroidir.',
      care: MITTS,
    },
    dense: {
      sign: 'Serrée, peu de gros trous',
      now: 'Grillez-le.',
      next: 'Pointage plus long, plus chaud, ou levain plus mûr. Changez-en un.',
    },
    flyingCrust: {
      sign: 'Croûte décollée, un trou',
      now: null,
      next: 'Regardez d’abord deux autres signes.',
    },
    streaks: {
      sign: 'Traînées dans la mie',
      now: null,
      next: 'Moins de farine sur le plan.',
    },
  },
  handOver: {
    soft: {
      sign: 'Croûte molle',
      now: 'Ouvrez le sac. 5 à 8 minutes au four chaud.',
      next: 'En sac à {bagHeat} au plus, en papier.',
    },
  },
};
