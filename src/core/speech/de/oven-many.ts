import type * as english from '../words/oven-many.ts';
import type { InTongue } from '../tongue.ts';

const OUT = { headline: 'Nimm die Laibe heraus', slab: 'Alle sind draußen' };
const SCORED = { headline: 'Schneide die Laibe ein', slab: 'Alle eingeschnitten' };

export const manyWords: InTongue<typeof english.manyWords> = {
  pot: {},
  stone: {
    score: { ...SCORED, detail: 'Stürz jeden auf ein bemehltes Brett. Ein schneller Schnitt.' },
    load: {
      detail: 'Schieb sie ein. Kochendes Wasser in die Schale, Tür zu.',
      slab: 'Alle sind drin',
      spoken: 'Schieb sie ein, kochendes Wasser in die Schale, Tür zu. Kinder, zurücktreten.',
    },
    unload: {
      ...OUT,
      detail: 'Alle vom Stein gleich auf das Gitter. Tür zu.',
      spoken: 'Nimm die Laibe heraus, gleich auf das Gitter. Kinder, zurücktreten.',
    },
  },
  tin: {
    score: {
      headline: 'Schneide die Laibe ein, oder lass es',
      detail: 'Je ein langer Schnitt. Roggenlaibe reißen von selbst.',
    },
    load: { slab: 'Alle sind drin' },
    unload: {
      ...OUT,
      detail: 'Stürz jeden aus seiner Form auf das Gitter. Tür zu.',
      spoken: 'Nimm die Laibe heraus, stürz jeden auf das Gitter. Kinder, zurücktreten.',
    },
  },
};
export const potsWords: InTongue<typeof english.potsWords> = {
  turnOn: {
    headline: 'Heiz den Ofen, Töpfe und Deckel drin',
    then: 'dann werden die Töpfe heiß',
    spoken: '{potHeat}. Alle Töpfe und Deckel hinein.',
  },
  preheating: {
    headline: 'Lass die Töpfe heiß werden',
    spoken: 'Um {time} sind die Töpfe heiß. Die Laibe bleiben, wo sie sind.',
  },
  turnOff: {
    detail: 'Die Töpfe bleiben zum Abkühlen drin.',
    spoken: 'Mach den Ofen aus. Die Töpfe bleiben zum Abkühlen drin.',
  },
};
