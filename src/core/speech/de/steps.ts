import type * as english from '../words/steps.ts';
import type { InTongue } from '../tongue.ts';
import { MITTS, RATING, RING, STEAM } from './care.ts';

export const bookSteps: InTongue<typeof english.bookSteps> = {
  title: 'Die Schritte',
  ask: '{part}, Minuten',
  rise: 'Anstieg vor dem Teilen',
  riseAsk: 'Anstieg vor dem Teilen, %',
  dough: 'Teig nach dem Mischen',
  doughAsk: 'Wie warm ist der gemischte Teig?',
  fridge: 'Kühl\u00adschrank',
  fridgeAsk: 'Wie kalt ist der Kühl\u00adschrank?',
  usual: 'Üblich: {least} bis {most} {unit}',
  usualHeat: 'Üblich: {least} bis {most}',
  touch: { fold: 'Warten auf Falten {n}', laminate: 'Warten auf Laminieren' },
  touchAsk: { fold: 'Minuten bis Falten {n}', laminate: 'Minuten bis zum Laminieren' },
  takeOut: 'Herausnehmen',
};
export const bookFolds: InTongue<typeof english.bookFolds> = {
  title: 'Falten',
  detail: 'Jedes Warten zählt ab dem Schritt davor.',
  noneDetail: 'Der Teig geht unberührt.',
  more: 'Einmal mehr falten',
  fewer: 'Einmal weniger falten',
  none: 'keine',
  sheet: 'laminieren',
  count: '{n}',
  both: '{n} und laminieren',
};
export const stepChoices: InTongue<typeof english.stepChoices> = {
  fillingIn: {
    title: 'Die Einlage kommt hinein',
    sheet: 'Beim Laminieren',
    sheetMeans: 'ausziehen, streuen, aufrollen: zwischen dem Falten',
    shape: 'Beim Formen',
    shapeMeans: 'am Ende in jeden Laib gerollt',
    none: 'keine Einlage',
  },
  shaping: {
    title: 'Formen',
    round: 'Von Hand',
    roundMeans: 'teilen, rundwirken, ruhen, formen',
    scoop: 'Gelöffelt',
    scoopMeans: 'viel Roggen, zu weich zum Formen',
  },
  proof: {
    title: 'Stückgare',
    cold: 'Im Kühl\u00adschrank',
    coldMeans: 'langsam, ein anderer Backtag',
    warm: 'Warm',
    warmMeans: 'am selben Tag, vor deinen Augen',
  },
  vessel: {
    title: 'Gebacken in',
    pot: 'Topf mit Deckel',
    stone: 'Heißer Stein',
    tin: 'Form',
    heats: 'Ofen auf {got}, dann {range}',
  },
};
export const vesselCare: InTongue<typeof english.vesselCare> = {
  pot: `${MITTS} ${RATING} ${RING}`,
  stone: `${STEAM} Viele Backpapiere halten nur {parchmentHeat} aus. ${RING}`,
  tin: `${MITTS} ${RING}`,
};
export const stepsLines: InTongue<typeof english.stepsLines> = {
  coldInPot: 'Kalter Teig nur in blankes Gusseisen, oder frag den Hersteller.',
};
