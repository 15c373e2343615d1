import type * as english from '../words/ways.ts';
import type { InTongue } from '../tongue.ts';

export const ways: InTongue<typeof english.ways> = {
  title: 'Anzeige',
  theme: { name: 'Seite', light: 'Hell', dark: 'Dunkel' },
  night: { name: 'Wenig Licht', off: 'Nie', hours: 'Nachts', dim: 'Jetzt' },
  hands: { name: 'Große Taste liegt', right: 'Rechts', left: 'Links' },
  text: { name: 'Schrift', plain: 'Üblich', bigger: 'Groß' },
  clock: { name: 'Uhr', '24': '24 h', '12': '12 h' },
  heat: { name: 'Hitze' },
  weight: { name: 'Gewicht' },
  tongue: { name: 'Spra\u00adche', en: 'English', fr: 'Français', de: 'Deutsch' },
  card: 'Bank\u00adkarte',
};
export const tongueVoice: InTongue<typeof english.tongueVoice> = {
  own: 'Die eigene Stimme dieses Tablets spricht Deutsch.',
  none: 'Keine deutsche Stimme auf diesem Tablet: es spricht Englisch.',
};

export const bankCard: InTongue<typeof english.bankCard> = {
  title: 'Halt eine Bankkarte an den Bildschirm',
  detail: 'Mach den Rahmen so breit wie die Karte. Dann speichern.',
  frame: 'Ein Rahmen, so groß wie eine Bankkarte',
  bigger: 'Größer',
  smaller: 'Kleiner',
  bitBigger: 'Etwas größer',
  bitSmaller: 'Etwas kleiner',
  save: 'Passt: speichern',
  usual: 'Übliche Größe',
};
