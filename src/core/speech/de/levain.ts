import type * as english from '../words/levain.ts';
import type { InTongue } from '../tongue.ts';

export const levain: InTongue<typeof english.levain> = {
  'levain.feed': {
    headline: 'Füttere das Anstellgut',
    detail: 'Wieg jede Zeile in ein sauberes Glas, dann rühr um.',
    slab: 'Gefüttert',
    then: 'dann lässt du es gehen',
    spoken: 'Füttere das Anstellgut. Wieg jede Zeile in ein sauberes Glas, dann rühr um.',
    care: 'Rosa, orange oder Schimmel: alles wegwerfen. Deckel nur lose auflegen, nie fest zu.',
  },
  'levain.ripening': {
    headline: 'Lass den Sauerteig gehen',
    detail: 'Nächster Blick: {time}. Warm und ruhig stellen.',
    slab: 'Jetzt nachsehen',
    then: 'und sagen, was du siehst',
    spoken: 'Nächster Blick: {time}. Lass den Sauerteig gehen.',
    care: 'Deckel lose lassen: ein dicht verschlossenes Glas kann platzen.',
  },
  'levain.look': {
    headline: 'Sieh nach dem Sauerteig',
    detail: 'Sag, was du siehst. „Nicht sicher“ ist auch eine Antwort.',
    slab: 'Nachgesehen',
    then: 'dann entscheidest du',
    spoken: 'Sieh nach dem Sauerteig. Sag, was du siehst.',
    care: 'Rosa, orange oder Schimmel: alles wegwerfen.',
  },
  'levain.ripe': {
    headline: 'Behalte {keepBack} als Anstellgut',
    detail: 'Sauberes Glas, loser Deckel, ab in den Kühl\u00adschrank.',
    slab: 'Beiseite gestellt',
    then: 'dann Mehl abwiegen',
    spoken: '{keepBack} bleiben als Anstellgut. Loser Deckel, ab in den Kühl\u00adschrank.',
    care: 'Rosa, orange oder Schimmel: alles wegwerfen. Deckel nur lose auflegen, nie fest zu.',
  },
};
