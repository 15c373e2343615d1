import type * as english from '../words/oven-tin.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS, RING } from './care.ts';

const HOT_TIN = 'Die Form ist jetzt heißes Eisen: trockene Handschuhe, Kinder 1 m weg.';

export const tinWords: InTongue<typeof english.tinWords> = {
  turnOn: {
    headline: 'Heiz den Ofen, Rost unten',
    detail: '{bakeHeat}. Die Formen bleiben draußen, bis sie voll sind.',
    slab: 'Ofen ist an',
    then: 'dann heizt er auf',
    spoken: '{bakeHeat}, Rost unten. Die Formen bleiben draußen.',
    care: RING,
  },
  preheating: {
    headline: 'Lass den Ofen heiß werden',
    detail: 'Heiß: {time}. Die Laibe bleiben zugedeckt.',
    slab: 'Er ist heiß',
    then: 'dann den ersten Laib prüfen',
    spoken: 'Um {time} ist der Ofen heiß. Die Laibe bleiben zugedeckt.',
    care: 'Der Ofen ist heiß. Kinder bleiben 1 m weg.',
  },
  before: {
    headline: 'Mach dich bereit für den Ofen',
    detail: 'Zeile für Zeile. Sag, wie es wirklich ist.',
    slab: 'Fertig',
    then: 'dann den Laib einschneiden',
    spoken: 'Mach dich bereit für den Ofen. Kinder, zurücktreten.',
    care: RING,
  },
  score: {
    headline: 'Schneide den Laib ein, oder lass es',
    detail: 'Ein langer Schnitt. Ein Roggenlaib reißt von selbst.',
    slab: 'Geschnitten oder nicht',
    then: 'dann in den Ofen',
    spoken: 'Ein langer Schnitt, oder keiner bei Roggen. Dann deck die Klinge ab.',
    care: `Klinge: schneide von deiner Hand weg, dann deck sie ab. ${RING}`,
  },
  load: {
    headline: 'Stell die Formen in den Ofen',
    detail: 'Rost unten, Luft zwischen den Formen. Tür zu.',
    slab: 'Ist drin',
    then: 'drück, wenn die Tür zu ist',
    spoken: 'Rost unten, Luft zwischen den Formen, Tür zu. Kinder, zurücktreten.',
    care: `${MITTS} ${RING}`,
  },
  open: {
    headline: 'Lass die Kruste Farbe bekommen',
    detail: 'Blick: {time}. Ofen auf {bakeHeat}; goldbraun, nicht schwarz.',
    slab: 'Jetzt nachsehen',
    then: 'und sagen, was du siehst',
    spoken: 'Nächster Blick: {time}. Goldbraun, nicht schwarz.',
    care: `${HOT_TIN} ${BURN}`,
  },
  judge: {
    headline: 'Sieh dir die Kruste an',
    detail: 'Stürz einen mit trockenen Handschuhen heraus. Schau auf die Seiten.',
    slab: 'Nachgesehen',
    then: 'dann entscheidest du',
    spoken: 'Sieh dir Kruste und Seiten an. Kinder, zurücktreten.',
    care: `${MITTS} ${RING}`,
  },
  unload: {
    headline: 'Nimm den Laib heraus',
    detail: 'Stürz ihn aus seiner Form auf das Gitter. Tür zu.',
    slab: 'Er ist draußen',
    then: 'drück mit freien Händen',
    spoken: 'Nimm den Laib heraus, stürz ihn auf das Gitter. Kinder, zurücktreten.',
    care: `${MITTS} ${RING}`,
  },
  recover: {
    headline: 'Lass den Ofen nachheizen',
    detail: 'Tür zu. Heiß: {time}.',
    slab: 'Er ist heiß',
    then: 'dann den nächsten Laib prüfen',
    spoken: 'Um {time} ist der Ofen wieder heiß. Tür zu.',
    care: `${HOT_TIN} ${BURN}`,
  },
  turnOff: {
    headline: 'Mach den Ofen aus',
    detail: 'Die leeren Formen kühlen auf dem Herd, außer Reichweite.',
    slab: 'Ofen ist aus',
    then: 'die letzte Ladung ist draußen',
    spoken: 'Mach den Ofen aus. Die Formen kühlen außer Reichweite.',
    care: 'Die Formen bleiben eine Weile heiß. Kinder bleiben 1 m weg.',
  },
};
