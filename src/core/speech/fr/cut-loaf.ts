import type * as english from '../words/cut-loaf.ts';
import type { InTongue } from '../tongue.ts';

export const cutLoaf: InTongue<typeof english.cutLoaf> = {
  crumb: {
    ask: 'Regardez la mie',
    shown: {
      even: 'Régulière',
      tight: 'Serrée',
      bigHoles: 'Peu de gros trous',
      gummy: 'Collante',
      streaks: 'Traînées',
    },
  },
  base: {
    ask: 'Regardez tout le dessous',
    shown: { even: 'Comme le reste', tight: 'Serré ou collant', dark: 'Très foncé' },
  },
  holes: {
    ask: 'Regardez où sont les trous',
    shown: {
      none: 'Aucun ne ressort',
      underCrust: 'Sous la croûte',
      throughout: 'Partout',
      byFilling: 'Près de la garniture',
    },
  },
  crust: { ask: 'Regardez la croûte', shown: { golden: 'Dorée', pale: 'Pâle', dark: 'Foncée' } },
  spread: {
    ask: 'Regardez sa forme',
    shown: { tall: 'Haute', spread: 'Étalée', burst: 'Déchirée sur le côté' },
  },
  sour: { ask: 'Sentez la mie', shown: { no: 'Pas très acide', sour: 'Acide' } },
};

export const howSure: InTongue<typeof english.howSure> = {
  likely: 'Sans doute',
  mayBe: 'Peut-être',
  hard: 'Difficile à dire',
};

export const cutLoafSays: InTongue<typeof english.cutLoafSays> = {
  well: 'Un beau pain. Gardez tout ainsi.',
  causes: 'Changez une chose, puis regardez encore.',
  look: 'Trop peu pour juger.',
  oneSign: 'Un signe ne suffit pas. Regardez-en un autre.',
  done: 'Difficile à dire. Refaites de même et regardez encore.',
};

export const loafChanges: InTongue<typeof english.loafChanges> = {
  warmerDough: 'Partez d’une pâte plus chaude.',
  longerBulk: 'Laissez le pointage durer un peu plus.',
  longerProof: 'Laissez lever le pain façonné un peu plus longtemps.',
  shorterBulk: 'Arrêtez le pointage un peu plus tôt.',
  coolerDough: 'Partez d’une pâte plus fraîche.',
  shorterCold: 'Laissez-le moins longtemps au froid.',
  coolLonger: 'Laissez-le refroidir deux heures avant de couper.',
  bakeLonger: 'Cuisez-le cinq à dix minutes de plus.',
  tighterSkin: 'Façonnez un peu plus serré.',
  coverSkin: 'Gardez le pain couvert, sa peau reste souple.',
  lessFlour: 'Mettez moins de farine sur le plan.',
  hotterOven: 'Chauffez le four plus longtemps.',
  coolerOven: 'Réglez le four un peu plus bas.',
  trayBelow: 'Mettez une plaque à l’étage du dessous.',
  drierFilling: 'Égouttez et séchez bien la garniture.',
};

export const dayFacts: InTongue<typeof english.dayFacts> = {
  rise: 'la pousse à la fin du pointage',
  proof: 'la pousse du pain façonné',
  dough: 'la chaleur de la pâte',
  poke: 'le creux du doigt',
  core: 'la température à cœur',
  crust: 'sa croûte au four',
  baked: 'son temps au four',
  cooled: 'son temps de ressuage',
};

export const cutPage: InTongue<typeof english.cutPage> = {
  title: 'Pain coupé',
  well: 'Un beau pain',
  keepIt: 'Gardez tout ainsi.',
  hard: 'Difficile à dire',
  perhaps: 'Peut-être {name}, ou {other}.',
  look: 'Trop peu pour juger',
  same: 'Refaites de même et regardez encore.',
  cause: '{value} : {name}',
  also: 'Peut-être {name}',
  change: 'La prochaine fois',
  because: 'Ce jour-là le confirme : {lines}.',
  keep: 'Garder',
  keepThen: 'avec cette fournée',
  kept: 'Regardé le {date}',
  todo: 'Que faire',
  todoTitle: 'Que faire à ce sujet',
  before: 'La réponse d’avant',
  again: 'Regarder encore',
  back: 'Retour au pain',
  refused: 'Ce n’est pas gardé. Réessayez.',
};

export const cutLoafLines: InTongue<typeof english.cutLoafLines> = {
  cutLoafUnsure: 'Pas sûr',
};
