import type * as english from '../words/feed.ts';
import type { InTongue } from '../tongue.ts';

export const feed: InTongue<typeof english.feed> = {
  ripe: 'dann etwa reif',
  ratio: 'gefüttert {ratio}',
  another: 'Neue Zeit',
  planned: 'Willst du zu einer anderen Zeit mischen? Sag es vor dem Wiegen.',
  spoken: '{line}. Reif etwa um {time}. Andere Zeit zum Mischen? Sag es vorher.',
  ask: 'Wann willst du mischen?',
  earlier: 'Früher',
  later: 'Später',
  much: { earlier: '3 h früher', later: '3 h später' },
  stands: {
    early: 'Mit {ratio} ist er dann noch nicht reif.',
    fits: 'Mit {ratio} ist er dann reif.',
    late: 'Mit {ratio} ist er dann überreif.',
  },
  offer: 'Für diese Zeit füttere {ratio}:',
  rough: 'So weit vom Üblichen, dass es nur grob geschätzt ist.',
  none: 'Bis dahin wird er nicht reif. Wähl eine spätere Zeit.',
  guess: 'Gerechnet mit {celsius} in der Küche. Sieh trotzdem nach.',
  take: '{grams} Anstellgut sind drin',
};
