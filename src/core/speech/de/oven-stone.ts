import type * as english from '../words/oven-stone.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS, RING, STEAM } from './care.ts';

const HOT_STONE = 'Stein und Schale bleiben heiß: Kinder bleiben 1 m weg.';

export const stoneWords: InTongue<typeof english.stoneWords> = {
  turnOn: {
    headline: 'Heiz den Ofen, Stein und Schale drin',
    detail: '{potHeat}, oder so heiß er kann. Leere Schale darunter.',
    slab: 'Ofen ist an',
    then: 'dann wird der Stein heiß',
    spoken: '{potHeat}. Stein hinein, leere Schale darunter.',
    care: `Viele Backpapiere halten nur {parchmentHeat} aus. ${RING}`,
  },
  preheating: {
    headline: 'Lass den Stein heiß werden',
    detail: 'Heiß: {time}. Die Laibe bleiben, wo sie sind.',
    slab: 'Er ist heiß',
    then: 'dann den ersten Laib prüfen',
    spoken: 'Um {time} ist der Stein heiß. Die Laibe bleiben, wo sie sind.',
    care: 'Der Ofen ist heiß. Kinder bleiben 1 m weg.',
  },
  before: {
    headline: 'Mach dich bereit für den heißen Stein',
    detail: 'Zeile für Zeile. Sag, wie es wirklich ist.',
    slab: 'Fertig',
    then: 'dann den Laib einschneiden',
    spoken: 'Mach dich bereit für den heißen Stein. Kinder, zurücktreten.',
    care: RING,
  },
  score: {
    headline: 'Schneide den Laib ein',
    detail: 'Stürz ihn auf ein bemehltes Brett. Ein schneller Schnitt.',
    slab: 'Eingeschnitten',
    then: 'dann auf den Stein',
    spoken: 'Einen Zentimeter tief, ein schneller Schnitt. Dann deck die Klinge ab.',
    care: `Klinge: schneide von deiner Hand weg, dann deck sie ab. ${RING}`,
  },
  load: {
    headline: 'Schieb ein, Wasser in die Schale',
    detail: 'Schieb ihn ein. Kochendes Wasser in die Schale, Tür zu.',
    slab: 'Er ist drin',
    then: 'drück, wenn die Tür zu ist',
    spoken: 'Schieb ihn ein, kochendes Wasser in die Schale, Tür zu. Kinder, zurücktreten.',
    care: `${STEAM} ${RING}`,
  },
  open: {
    headline: 'Lass die Kruste Farbe bekommen',
    detail: 'Blick: {time}. Ofen auf {bakeHeat}; goldbraun, nicht schwarz.',
    slab: 'Jetzt nachsehen',
    then: 'und sagen, was du siehst',
    spoken: 'Nächster Blick: {time}. Goldbraun, nicht schwarz.',
    care: `${HOT_STONE} ${BURN}`,
  },
  unload: {
    headline: 'Nimm den Laib heraus',
    detail: 'Vom Stein gleich auf das Gitter. Tür zu.',
    slab: 'Er ist draußen',
    then: 'drück mit freien Händen',
    spoken: 'Nimm den Laib heraus, gleich auf das Gitter. Kinder, zurücktreten.',
    care: `${MITTS} ${RING}`,
  },
  recover: {
    headline: 'Lass den Stein nachheizen',
    detail: 'Leere Schale wieder hinein. Heiß: {time}.',
    slab: 'Er ist heiß',
    then: 'dann den nächsten Laib prüfen',
    spoken: 'Um {time} ist der Stein wieder heiß. Leere Schale hinein.',
    care: `${HOT_STONE} ${BURN}`,
  },
  turnOff: {
    headline: 'Mach den Ofen aus',
    detail: 'Stein und Schale bleiben zum Abkühlen drin.',
    slab: 'Ofen ist aus',
    then: 'die letzte Ladung ist draußen',
    spoken: 'Mach den Ofen aus. Stein und Schale bleiben zum Abkühlen drin.',
    care: 'Der Stein bleibt stundenlang heiß. Kinder bleiben 1 m weg.',
  },
};
