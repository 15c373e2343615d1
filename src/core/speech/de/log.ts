import type * as english from '../words/log.ts';
import type { InTongue } from '../tongue.ts';

export const log: InTongue<typeof english.log> = {
  title: 'Tagebuch',
  edge: 'Was du gebacken hast',
  opening: 'Das Tagebuch wird geöffnet.',
  closed: 'Das Tagebuch lässt sich nicht öffnen',
  closedDetail: 'Nichts davon ist verloren. Öffne diese Seite neu.',
  gone: 'Das steht nicht mehr im Tagebuch.',
};
