import type * as english from '../words/oven-rack.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, HOT_IRON, RING } from './care.ts';

const HOT_RACK = 'Heißer Rost: trockene Handschuhe, beide Hände, Gesicht weg.';

export const rackWords: InTongue<typeof english.rackWords> = {
  open: {
    headline: 'Lass ihn auf dem Rost fertig backen',
    detail: 'Ohne Topf. Nächster Blick: {time}.',
    spoken: 'Nächster Blick: {time}. Er bäckt auf dem blanken Rost fertig.',
    care: `${HOT_IRON} ${BURN}`,
  },
  judge: {
    care: `${HOT_RACK} ${RING}`,
  },
  unload: {
    detail: 'Vom blanken Rost auf das Kuchengitter. Tür zu.',
    spoken: 'Nimm den Laib vom heißen Rost. Kinder, zurücktreten.',
    care: `${HOT_RACK} ${RING}`,
  },
};
