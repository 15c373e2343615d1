import type * as english from '../words/remedy-page.ts';
import type { InTongue } from '../tongue.ts';

export const remedyPage: InTongue<typeof english.remedyPage> = {
  open: 'Etwas stimmt nicht',
  ask: 'Was siehst du?',
  detail: 'Wähl, was am ähnlichsten ist.',
  now: 'Jetzt',
  next: 'Nächstes Mal',
  nothingNow: 'Jetzt ist nichts zu tun.',
  others: 'Andere Zeichen',
};
