import type * as english from '../words/voice.ts';
import type { InTongue } from '../tongue.ts';

export const voiceWords: InTongue<typeof english.voiceWords> = {
  title: 'Die Stim\u00adme',
  detail: 'Deine Namen sind nicht aufgenommen: dein Tablet kann sie vorlesen.',
  own: 'Lies meine Worte vor',
  ownOn: 'An: kein Netz wird gefragt',
  ownOff: 'Aus',
  slower: 'Langsamer sprechen',
  slowerIs: { grown: 'Aus', small: 'An' },
  asking: 'Die Stimme des Tablets wird gesucht…',
  none: 'Dieses Tablet hat keine eigene Stimme. Angeschaltet tut das nichts.',
};
