import { inTongue } from '../tongue.ts';

/** How things are shown: one page of choices, kept on this tablet. */
export const ways = inTongue('ways', 'ways', {
  title: 'Ways of showing',
  theme: { name: 'Page', light: 'Light', dark: 'Dark' },
  night: { name: 'Low light', off: 'Never', hours: 'At night', dim: 'Now' },
  hands: { name: 'Big button by', right: 'Right hand', left: 'Left hand' },
  text: { name: 'Words', plain: 'Plain', bigger: 'Bigger' },
  clock: { name: 'Clock', '24': '24 hours', '12': '12 hours' },
  heat: { name: 'Heat' },
  weight: { name: 'Weight' },
  /** Each by its own name, whichever stands. */
  tongue: { name: 'Lan\u00adguage', en: 'English', fr: 'Français', de: 'Deutsch' },
  card: 'Size by a bank card',
} as const);

/** Who speaks the tongue that stands, where that is not English. */
export const tongueVoice = inTongue('ways', 'tongueVoice', {
  own: 'This tablet’s own voice speaks these words.',
  none: 'No voice for these words on this tablet: spoken in English.',
} as const);

/** The true size of this screen, by a card that is the same size everywhere. */
export const bankCard = inTongue('ways', 'bankCard', {
  title: 'Hold a bank card to the screen',
  detail: 'Make the frame as wide as the card. Then save it.',
  frame: 'A frame the size of a bank card',
  bigger: 'Bigger',
  smaller: 'Smaller',
  bitBigger: 'A bit bigger',
  bitSmaller: 'A bit smaller',
  save: 'It fits: save it',
  usual: 'Usual size',
} as const);
