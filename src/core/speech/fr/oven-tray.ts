import type * as english from '../words/oven-tray.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS } from './care.ts';

export const trayWords: InTongue<typeof english.trayWords> = {
  open: {
    headline: 'Laissez colorer le pain plat',
    care: `${MITTS} ${BURN}`,
  },
  unload: {
    headline: 'Sortez le pain plat',
    detail: 'Posez d’abord la plaque. Puis le pain sur la grille.',
    spoken: 'Sortez le pain plat, la plaque posée d’abord. Les enfants, reculez.',
  },
};
