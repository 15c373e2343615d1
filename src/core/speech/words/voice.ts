import { inTongue } from '../tongue.ts';

/** The voice: what it says is clips; what the baker wrote the tablet itself may read. */
export const voiceWords = inTongue('voice', 'voiceWords', {
  title: 'The voice',
  detail: 'No clip says a name you gave: your tablet can read it.',
  own: 'Read my own words aloud',
  ownOn: 'On: no network is asked',
  ownOff: 'Off',
  slower: 'Speak slower',
  slowerIs: { grown: 'Off', small: 'On' },
  /** What the tablet can do about it. */
  asking: 'Looking for the tablet’s own voice…',
  none: 'This tablet has no voice of its own. Turned on, this does nothing.',
} as const);
