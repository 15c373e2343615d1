import type * as english from '../words/starter.ts';
import type { InTongue } from '../tongue.ts';

const STARTER_CARE = 'Traînées roses ou orange, ou duvet : jetez tout, sans goûter.';

export const starterWords: InTongue<typeof english.starterWords> = {
  title: 'Levain-chef',
  unnamed: 'Votre levain-chef',
  unknown: 'Dites où il est, ou que vous l’avez rafraîchi.',
  care: STARTER_CARE,
  loose: 'Couvrez le bocal sans serrer, jamais fermé.',
  long: `Si longtemps au froid : regardez bien d’abord. ${STARTER_CARE}`,

  fed: 'Dernier rafraîchi',
  fedValue: '{ratio}, {date} {time}',
  where: 'Où il est',
  places: { counter: 'Hors du frigo', fridge: 'Au frigo' },
  whereAsk: 'Où est le bocal ?',
  kept: 'Gardé',
  keptAsk: 'Combien en gardez-vous ?',
  name: 'Son nom',
  nameAsk: 'Comment s’appelle-t-il ?',
  names: {
    wheat: 'Levain-chef de blé',
    rye: 'Levain-chef de seigle',
    wholemeal: 'Levain-chef complet',
    spelt: 'Levain-chef d’épeautre',
    other: 'Second levain-chef',
  },

  ripening: 'Mûr entre {time} et {until}.',
  ripe: 'Mûr vers {time}. Bon jusqu’à {until}.',
  pastIt: 'Il était mûr vers {time}. Il a faim : rafraîchissez-le.',
  unfed: 'Hors du frigo, pas rafraîchi. À faire avant {until}.',
  hungry: 'Hors du frigo, pas rafraîchi, depuis {time}. Rafraîchissez-le.',
  fridge: 'Au frigo depuis {days}. Il y tient jusqu’au {date}.',
  fridgeToday: 'Au frigo depuis {time}. Il y tient jusqu’au {date}.',
  fridgeLong: 'Au frigo depuis {days} : il lui faut un rafraîchi.',
  feedsFirst: {
    one: 'Un rafraîchi hors du frigo avant une fournée.',
    more: '{count} rafraîchis hors du frigo avant une fournée.',
  },
  days: { one: 'un jour', more: '{count} jours' },
  rough: 'Estimation grossière : il fait très chaud ou froid ici.',

  before: {
    ripeNow: 'Votre levain-chef est mûr : employez-le avant {until}.',
    ripening: 'Votre levain-chef est mûr entre {time} et {until}.',
    feedFirst: {
      one: 'Il faut d’abord un rafraîchi au levain-chef.',
      more: 'Il faut d’abord {count} rafraîchis au levain-chef.',
    },
    ready: 'Votre levain-chef est au frigo : son levain le réveille.',
  },

  due: {
    ripe: 'Le levain-chef doit être mûr : emploi, repas ou frigo.',
    unfed: 'Votre levain-chef attend son rafraîchi.',
    cold: 'Votre levain-chef est au froid depuis longtemps. Rafraîchissez-le cette semaine.',
  },
  see: 'S’en occuper',
  beside: 'voyez maintenant',
  call: { name: 'Levain-chef', short: 'Levain-chef', subject: 'le levain-chef' },
  chill: 'Au frigo',
  tomorrow: 'Rappeler demain',
  close: 'Pas maintenant',

  feed: 'Je l’ai rafraîchi',
  feedAsk: 'Comment est-il rafraîchi ?',
  feedDetail: 'En poids : levain-chef, farine, eau. Cuisine : {celsius}.',
  feedWarmth: 'La cuisine n’est pas à {celsius}',
  warmthAsk: 'À combien est la cuisine ?',
  ratio: '1:{flour}:{flour}',
  ripeAbout: '{ratio}, mûr {time}',
  feedSaid: 'C’est fait. Il devrait être mûr à {time}.',

  speed: 'Sa vitesse',
  speedUnknown: 'Pas encore connue',
  speedValue: '{percent} de l’habitude',
  speeds: {
    usual: 'Aussi rapide que la plupart',
    slower: 'Plus lent que la plupart, d’environ {part}',
    faster: 'Plus rapide que la plupart, d’environ {part}',
  },
  parts: {
    tenth: 'un dixième',
    fifth: 'un cinquième',
    quarter: 'un quart',
    third: 'un tiers',
    half: 'la moitié',
  },
  guess: 'Personne ne connaît encore sa vitesse',
  percent: '{count} %',
  speedNumber: 'Sa vitesse : {percent} de l’habitude, sans doute {least} à {most}.',
  taught: {
    none: 'Aucune fournée ne l’a encore montré.',
    one: 'Une fournée l’a montré.',
    more: '{count} fournées l’ont montré.',
  },
  strong: 'Est-il assez fort ?',
  strongPress: 'Est-il fort ?',
  strongNotFed: 'Rafraîchissez-le d’abord, puis regardez deux fois.',
  strongFirst: 'Regardez deux fois après un rafraîchi : une fois dit trop peu.',
  strongAgain: 'Regardez encore après {time} : une fois ne suffit pas.',
  strongUnclear: 'Pas clair : à revoir',
  strongUnclearWhy: 'Ce que vous avez vu ne dit rien encore.',
  sures: { nearly: 'Presque sûr.', likely: 'Pas sûr, mais probable.' },
  strengths: {
    strong: 'Assez fort',
    once: 'Encore un rafraîchi',
    weak: 'Encore trop faible',
  },
  strengthThen: {
    strong: 'Employez-le tant qu’il est bombé.',
    once: 'Rafraîchi {ratio} maintenant : mûr {time}.',
    weak: 'Rafraîchissez-le deux fois par jour, au chaud.',
  },
  seeAsk: 'Que voyez-vous ?',
  sees: {
    '0': 'Pas levé',
    '50': 'De moitié',
    '100': 'Doublé',
    '200': 'Triplé',
    domed: 'Bombé',
    fallen: 'Retombé',
  },
  keyRise: 'Taper sa pousse',
  keyRiseAsk: 'De combien a-t-il levé ?',

  renew: 'C’est un nouveau levain-chef',
  renewTitle: 'Oublier tout de l’ancien ?',
  renewDetail: 'Vitesse, rafraîchis et nom repartent à neuf. Les fournées restent.',
  renewHold: 'Tenir pour oublier',
  renewHolding: 'Tenez encore',
  renewFirst: 'Touchez d’abord ici',
  renewSecond: 'Puis touchez ici',
  renewTwo: 'Ou deux touches, bien écartées',
  keep: 'Le garder',
};

export const starterLines: InTongue<typeof english.starterLines> = {
  STARTER_CARE,
};
