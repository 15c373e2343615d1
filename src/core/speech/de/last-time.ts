import type * as english from '../words/last-time.ts';
import type { InTongue } from '../tongue.ts';

export const lastTimeLooked: InTongue<typeof english.lastTimeLooked> = {
  well: 'Letztes Mal war es ein schöner Laib.',
  under: 'Letztes Mal sah es nach Untergare aus.',
  short: 'Letztes Mal sah es nach knapper Gare aus.',
  over: 'Letztes Mal sah es nach Übergare aus.',
  cutHot: 'Letztes Mal sah es zu warm ge\u00adschnitten aus.',
  notBaked: 'Letztes Mal sah es nicht ganz durchgebacken aus.',
  skin: 'Letztes Mal sah die Haut schwach oder trocken aus.',
  benchFlour: 'Letztes Mal waren Mehlstreifen zu sehen.',
  ovenLow: 'Letztes Mal schien der Ofen zu kühl.',
  ovenHot: 'Letztes Mal schien der Ofen zu heiß.',
  wetFilling: 'Letztes Mal sah die Einlage zu nass aus.',
};
export const lastTimeNoted: InTongue<typeof english.lastTimeNoted> = {
  good: 'Letztes Mal war es gut.',
  under: 'Letztes Mal war es Untergare.',
  over: 'Letztes Mal war es Übergare.',
  dark: 'Letztes Mal war die Kruste zu dunkel.',
  pale: 'Letztes Mal war die Kruste zu blass.',
};
export const thisTime: InTongue<typeof english.thisTime> = {
  warmerDough: 'Fang diesmal mit wärmerem Teig an.',
  longerBulk: 'Warte diesmal auf die Wölbung.',
  longerProof: 'Lass diesmal den geformten Laib etwas länger gehen.',
  shorterBulk: 'Beende diesmal die Stockgare etwas früher.',
  coolerDough: 'Fang diesmal mit kühlerem Teig an.',
  shorterCold: 'Lass ihn diesmal kürzer in der Kälte.',
  coolLonger: 'Lass ihn diesmal zwei Stunden auskühlen, bevor du schneidest.',
  bakeLonger: 'Back ihn diesmal fünf bis zehn Minuten länger.',
  tighterSkin: 'Forme ihn diesmal etwas straffer.',
  coverSkin: 'Halt den Laib diesmal zugedeckt.',
  lessFlour: 'Nimm diesmal weniger Mehl auf der Fläche.',
  hotterOven: 'Heiz den Ofen diesmal länger vor.',
  coolerOven: 'Stell den Ofen diesmal etwas niedriger.',
  trayBelow: 'Stell diesmal ein Blech auf die Schiene darunter.',
  drierFilling: 'Lass die Einlage diesmal gut abtropfen und trockne sie.',
};
export const lastTimeLines: InTongue<typeof english.lastTimeLines> = {
  theSameWay: 'Mach es genauso.',
  ownLastTime: 'Letztes Mal: „{words}“',
};
