import type * as english from '../words/bowls.ts';
import type { InTongue } from '../tongue.ts';

export const bowlShares: InTongue<typeof english.bowlShares> = {
  each: '{bowls} Schüsseln, je {grams}.',
  about: '{bowls} Schüsseln, je etwa {grams}.',
};
export const bowlClock: InTongue<typeof english.bowlClock> = {
  later: 'Schüssel {bowl}: {minutes} später.',
  at: 'Schüssel {bowl}: {minutes} später, um {time}.',
};
export const bowlWeigh: InTongue<typeof english.bowlWeigh> = {
  first: 'In {bowls} Schüsseln. Waage für jede auf null.',
  second: 'Auf {bowls} Teige. Waage für jeden auf null.',
  spoken: '{grams} {name}. In jede von {bowls} Schüsseln.',
  more: 'Gib {grams} mehr in Schüssel {bowl}.',
};
export const bowlPage: InTongue<typeof english.bowlPage> = {
  press: 'Nach Schüsseln',
  title: 'Nach Schüsseln',
  line: 'Zu wiegen',
  bowl: 'Schüssel {bowl}',
  each: 'Schüsseln',
  all: 'Alles',
  together: 'Zusammen',
  needs: '{grams} {name}: {shares}',
};
