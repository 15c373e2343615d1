import type * as english from '../words/verdicts.ts';
import type { InTongue } from '../tongue.ts';

export const moreActs: InTongue<typeof english.moreActs> = {
  standOut: { label: 'Draußen stehen lassen', then: 'sie werden warm und gehen' },
  flat: { label: 'Flach backen', then: 'auf geöltem Blech, jetzt' },
};
export const verdicts: InTongue<typeof english.verdicts> = {
  levain: {
    headline: 'Entscheide über den Sauerteig',
    acts: {
      ready: { label: 'Er ist reif', then: 'dann etwas aufheben' },
      notYet: { label: 'Noch nicht', then: 'später noch mal nachsehen' },
      over: { label: 'Überreif: jetzt nehmen', then: 'dann etwas aufheben' },
    },
    because: {
      ready: 'Verdoppelt und gewölbt: reif. Du kannst weitermachen.',
      notYet: 'Er braucht noch Zeit an einem warmen Platz. Du kannst trotzdem weitermachen.',
      over: 'Er ist eingesunken: nimm ihn in der nächsten Stunde. Du kannst warten, aber er wird saurer.',
      unsure:
        'Die Zeichen passen nicht zusammen. Sieh bald noch mal nach, oder mach weiter, wenn deine Hände es sagen.',
    },
  },
  bulk: {
    headline: 'Entscheide über den Teig',
    acts: {
      ready: { label: 'Er ist so weit', then: 'dann formen' },
      notYet: { label: 'Noch nicht', then: 'später noch mal nachsehen' },
      over: { label: 'Zu weit gegangen', then: 'dann flach backen' },
    },
    despite: 'Trotzdem weiter',
    because: {
      ready: 'Gewölbt, voller Blasen, und er wackelt: so weit. Du kannst weitermachen.',
      notYet: 'Er ist noch straff: gib ihm Zeit oder Wärme. Du kannst trotzdem weitermachen.',
      over: 'Er ist eingefallen und läuft: back ihn jetzt flach. Teilen kannst du ihn trotzdem.',
      unsure:
        'Die Zeichen passen nicht zusammen. Sieh bald noch mal nach, oder mach weiter, wenn deine Hände es sagen.',
    },
  },
  loaf: {
    headline: 'Entscheide über die Laibe',
    acts: {
      ready: { label: 'Sie sind so weit', then: 'dann zum Ofen' },
      notYet: { label: 'Noch nicht', then: 'später noch mal nachsehen' },
      over: { label: 'Zu weit gegangen', then: 'jetzt kalt in den Ofen' },
    },
    because: {
      ready: 'Sie sind gewachsen und wackeln: bereit zum Backen. Du kannst weitermachen.',
      notYet: 'Sie sind wenig gewachsen: lass sie länger kalt. Du kannst weitermachen.',
      over: 'Über dem Rand: jetzt kalt in den Ofen, mit flachem Schnitt. Viel zu weit: flach backen.',
      unsure: 'Eine kalte Delle allein sagt wenig. Sieh bald noch mal nach, oder mach weiter.',
    },
  },
  warm: {
    headline: 'Entscheide über die Laibe',
    acts: {
      ready: { label: 'Sie sind so weit', then: 'dann zum Ofen' },
      notYet: { label: 'Noch nicht', then: 'später noch mal nachsehen' },
      over: { label: 'Zu weit gegangen', then: 'jetzt backen, flacher Schnitt' },
    },
    because: {
      ready: 'Die Delle kommt langsam zurück: bereit zum Backen. Du kannst weitermachen.',
      notYet: 'Sie springt zurück: gib ihnen mehr Zeit. Du kannst trotzdem weitermachen.',
      over: 'Die Delle bleibt: jetzt backen, mit flachem Schnitt. Viel zu weit: flach backen.',
      unsure: 'Drück noch mal an einer anderen Stelle. Sieh bald noch mal nach, oder mach weiter.',
    },
  },
  poke: {
    headline: 'Entscheide über diesen Laib',
    acts: {
      ready: { label: 'Er ist so weit', then: 'dann in den Ofen' },
      notYet: { label: 'Noch nicht', then: 'er steht noch draußen' },
      over: { label: 'Zu weit gegangen', then: 'jetzt backen, flacher Schnitt' },
    },
    because: {
      ready:
        'Er ist gewachsen und die Delle kommt langsam zurück: so weit. Du kannst weitermachen.',
      notYet: 'Noch nicht so weit: lass ihn noch draußen stehen. Du kannst weitermachen.',
      over: 'Die Delle bleibt: jetzt kalt in den Ofen, mit flachem Schnitt.',
      unsure: 'Eine kalte Delle allein sagt wenig. Du kannst weitermachen.',
    },
  },
};
export const discardLevain: InTongue<typeof english.discardLevain> = {
  headline: 'Wirf diesen Sauerteig weg',
  detail: 'Rosa, orange oder Schimmel ist nichts zum Backen. Spül das Glas heiß.',
  slab: { value: 'discard', label: 'Dieses Backen beenden' },
  then: 'neu mit sauberem Anstellgut',
  spoken: 'Wirf diesen Sauerteig weg. Rosa, orange oder Schimmel ist nichts zum Backen.',
};
export const verdictsLines: InTongue<typeof english.verdictsLines> = {
  standOutBecause:
    'Sie sind kaum gewachsen und springen zurück. Lass sie draußen stehen, dann sieh nach. Du kannst weitermachen.',
  standOutFor:
    'Sie sind kaum gewachsen und springen zurück. Lass sie {minutes} draußen stehen, dann sieh nach. Du kannst weitermachen.',
  standThen: '{minutes}, dann nachsehen',
  standOnFor:
    'Noch nicht so weit: lass ihn {minutes} draußen stehen, dann sieh nach. Du kannst weitermachen.',
  readyForCold: 'So weit, und er geht im Kühl\u00adschrank weiter: teile ihn etwa jetzt.',
};
