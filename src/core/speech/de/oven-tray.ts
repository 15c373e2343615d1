import type * as english from '../words/oven-tray.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS } from './care.ts';

export const trayWords: InTongue<typeof english.trayWords> = {
  open: {
    headline: 'Lass das Fladenbrot Farbe bekommen',
    care: `${MITTS} ${BURN}`,
  },
  unload: {
    headline: 'Nimm das Fladenbrot heraus',
    detail: 'Erst das Blech abstellen. Dann das Brot auf das Gitter.',
    spoken: 'Nimm das Fladenbrot heraus, erst das Blech abstellen. Kinder, zurücktreten.',
  },
};
