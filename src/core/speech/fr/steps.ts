import type * as english from '../words/steps.ts';
import type { InTongue } from '../tongue.ts';
import { MITTS, RATING, RING, STEAM } from './care.ts';

export const bookSteps: InTongue<typeof english.bookSteps> = {
  title: 'Ses étapes',
  ask: '{part}, minutes',
  rise: 'Pousse avant division',
  riseAsk: 'Pousse avant division, %',
  dough: 'Pâte après mélange',
  doughAsk: 'À combien est la pâte mélangée ?',
  fridge: 'Frigo',
  fridgeAsk: 'À combien est le frigo ?',
  usual: 'Normal : {least} à {most} {unit}',
  usualHeat: 'D’habitude : {least} à {most}',
  touch: { fold: 'Attente du rabat {n}', laminate: 'Attente de l’étirage' },
  touchAsk: { fold: 'Minutes avant le rabat {n}', laminate: 'Minutes avant l’étirage' },
  takeOut: 'L’ôter',
};

export const bookFolds: InTongue<typeof english.bookFolds> = {
  title: 'Rabats',
  detail: 'Chaque attente part de ce qui précède.',
  noneDetail: 'La pâte lève sans qu’on y touche.',
  more: 'Un rabat de plus',
  fewer: 'Un rabat de moins',
  none: 'aucun',
  sheet: 'un étirage',
  count: '{n}',
  both: '{n} et un étirage',
};

export const stepChoices: InTongue<typeof english.stepChoices> = {
  fillingIn: {
    title: 'La garniture va',
    sheet: 'À l’étirage',
    sheetMeans: 'étirer, garnir, rouler : entre les rabats',
    shape: 'Au façonnage',
    shapeMeans: 'roulée dans chaque pain au façonnage',
    none: 'pas de garniture',
  },
  shaping: {
    title: 'Façonnage',
    round: 'À la main',
    roundMeans: 'diviser, bouler, détendre, façonner',
    scoop: 'À la cuillère',
    scoopMeans: 'beaucoup de seigle, trop mou à façonner',
  },
  proof: {
    title: 'Apprêt',
    cold: 'Au frigo',
    coldMeans: 'lent, cuit un autre jour',
    warm: 'Au chaud',
    warmMeans: 'le jour même, sous vos yeux',
  },
  vessel: {
    title: 'Cuit en',
    pot: 'Cocotte à couvercle',
    stone: 'Pierre chaude',
    tin: 'Moule',
    heats: 'four à {got}, puis {range}',
  },
};

export const vesselCare: InTongue<typeof english.vesselCare> = {
  pot: `${MITTS} ${RATING} ${RING}`,
  stone: `${STEAM} Souvent le papier cuisson ne tient que {parchmentHeat}. ${RING}`,
  tin: `${MITTS} ${RING}`,
};

export const stepsLines: InTongue<typeof english.stepsLines> = {
  coldInPot: 'Pâte froide : fonte nue seulement, ou demandez au fabricant.',
};
