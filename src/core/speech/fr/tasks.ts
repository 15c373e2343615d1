import type * as english from '../words/tasks.ts';
import type { InTongue } from '../tongue.ts';

const HOW_FAR = {
  done: 'Dire où elle en est',
  subject: 'où en est la pousse',
  headline: 'Regardez où en est la pousse',
  detail: 'Un coup d’œil au repère du bac m’en dit plus.',
};

export const fetchLoad: InTongue<typeof english.fetchLoad> = {
  headline: 'Sortez du frigo : {loaves}',
  spoken: 'à sortir du frigo : {loaves}',
};

export const tasks: InTongue<typeof english.tasks> = {
  rise45: HOW_FAR,
  rise70: HOW_FAR,
  rise85: HOW_FAR,
  soak: {
    done: 'Graines dans l’eau',
    subject: 'les graines à tremper',
    headline: 'Mettez les graines à tremper',
    detail: 'Juste couvertes. Plus de deux heures : au frigo.',
  },
  takeOut: {
    done: 'Fromage sorti',
    subject: 'le fromage à sortir',
    headline: 'Sortez le fromage dur',
    detail: 'Il se réchauffe. Ce qui se gâte reste au frigo.',
    care: 'Fromage frais, viande et aliments cuits restent au frigo.',
  },
  toast: {
    done: 'Grillées, à refroidir',
    subject: 'les noix et les graines',
    headline: 'Grillez les noix et les graines',
    detail: 'Dix minutes, dorées. Puis elles refroidissent sur la plaque.',
    care: 'La plaque brûle : gants secs, enfants à 1 m. Allergènes : fruits à coque, sésame.',
  },
  drain: {
    done: 'Égouttée et sèche',
    subject: 'la garniture à égoutter',
    headline: 'Égouttez la garniture, séchez-la',
    detail: 'Mouillée, elle glisse et déchire la pâte.',
  },
  cut: {
    done: 'Tout est coupé',
    subject: 'la garniture à couper',
    headline: 'Coupez la garniture en morceaux égaux',
    detail: 'Gros comme un pois. Le couteau est pour un adulte.',
    care: 'Lame : coupez loin de votre main.',
  },
  coat: {
    done: 'Farinée',
    subject: 'la garniture à fariner',
    headline: 'Farinez la garniture',
    detail: 'Une fine couche : ainsi elle ne glisse pas.',
  },
  bench: {
    done: 'Plan mouillé',
    subject: 'le plan à mouiller',
    headline: 'Mouillez le plan pour l’étirage',
    detail: 'Un film d’eau, assez large pour toute la pâte.',
  },
  baskets: {
    done: 'Bannetons farinés',
    subject: 'les bannetons à fariner',
    headline: 'Farinez les bannetons',
    detail: 'Farine de riz, jusque dans les rainures.',
  },
  grease: {
    done: 'Moules graissés',
    subject: 'les moules à graisser',
    headline: 'Graissez les moules',
    detail: 'Les coins aussi. Le beurre est du lait : nommez-le.',
  },
  shelf: {
    done: 'Étagère libre',
    subject: 'une étagère à libérer',
    headline: 'Libérez une étagère du frigo',
    detail: 'À plat, et de l’air autour des pains.',
  },
  parchment: {
    done: 'Papier coupé',
    subject: 'le papier à couper',
    headline: 'Coupez le papier cuisson à la taille',
    detail: 'Souvent il ne tient que {parchmentHeat}. Lisez la boîte.',
  },
  kettle: {
    done: 'L’eau bout',
    subject: 'l’eau à bouillir',
    headline: 'Faites bouillir l’eau pour la vapeur',
    detail: 'Une tasse, dans la plaque, quand on enfourne.',
    care: 'Eau bouillante : c’est pour un adulte. Les enfants restent à 1 m.',
  },
  fetch: {
    done: 'Sorti du frigo',
    subject: 'le prochain pain froid',
    headline: 'Sortez le pain {load} du frigo',
    detail: 'Les autres pains restent au froid.',
  },
  rack: {
    done: 'Grille sortie',
    subject: 'la grille à sortir',
    headline: 'Sortez la grille pour refroidir',
    detail: 'Près du four, loin des torchons et des mains.',
  },
  tidyMix: {
    done: 'Saladiers dans l’eau',
    subject: 'le plan à ranger',
    headline: 'Rangez le plan de travail',
    detail: 'Saladiers dans l’eau froide : la pâte part seule.',
  },
  tidyBulk: {
    done: 'Plan propre',
    subject: 'le plan à ranger',
    headline: 'Rangez le plan de travail',
    detail: 'Raclez, puis chiffon mouillé. Pas de pâte dans l’évier.',
  },
  tidyBench: {
    done: 'Restes enlevés',
    subject: 'le plan à ranger',
    headline: 'Rangez le plan de travail',
    detail: 'Coupe-pâte et balance essuyés, farine sous la main.',
  },
};

export const taskPress: InTongue<typeof english.taskPress> = {
  then: 'l’attente continue',
  leave: 'Passer',
  byPicture: 'par image',
  ahead: 'D’avance : {count}',
  aheadTitle: 'À faire d’avance',
  calls: '{name}. Appel à {time}.',
  aheadNone: 'Rien d’autre à faire d’avance.',
};

export const tasksLines: InTongue<typeof english.tasksLines> = {
  fetchLast: 'Aucun autre pain n’attend le four.',
  spoilsToo: 'Ce qui se gâte retourne tout de suite au frigo.',
};
