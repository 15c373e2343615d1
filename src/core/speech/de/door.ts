import type * as english from '../words/door.ts';
import type { InTongue } from '../tongue.ts';

export const doorWords: InTongue<typeof english.doorWords> = {
  bakeFirst: { label: 'Diesen zuerst backen', then: 'aus der Kälte, flacher Schnitt' },
  flat: { label: 'Flach backen', then: 'auf geöltem Blech, jetzt' },
  goesLast: { label: 'Noch nicht', then: 'er kommt zuletzt' },
};
export const doorBecause: InTongue<typeof english.doorBecause> = {
  goesLast: 'Noch nicht so weit: er kommt zuletzt.',
  ready: 'So weit, sagen die Zeichen. Back ihn jetzt.',
  byClock: 'So weit, sagt die Uhr. Back ihn jetzt.',
  coldDent: 'Eine kalte Delle allein sagt wenig. Back ihn jetzt.',
  disagree: 'Zeichen und Uhr sind uneins. Back ihn jetzt.',
  unsure: 'Kein Zeichen spricht fürs Warten, also back ihn jetzt.',
  bakeFirst: 'Bald Übergare. Back ihn vor den anderen.',
  bakeSoon: 'Bald Übergare, also back ihn jetzt.',
  switchGoal: 'Übergare, sagen Zeichen und Uhr. Viel zu weit: back ihn flach.',
};
