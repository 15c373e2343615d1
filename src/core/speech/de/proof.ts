import type * as english from '../words/proof.ts';
import type { InTongue } from '../tongue.ts';

export const proof: InTongue<typeof english.proof> = {
  'proof.counter': {
    headline: 'Lass die Laibe draußen stehen',
    detail: 'Kühl\u00adschrank: {time}. Mach jetzt Platz für sie.',
    slab: 'Jetzt kalt stellen',
    then: 'dann in den Kühl\u00adschrank',
    spoken: 'Um {time} kommen sie in den Kühl\u00adschrank. Mach jetzt Platz.',
  },
  'proof.toFridge': {
    headline: 'Stell die Laibe in den Kühl\u00adschrank',
    detail: 'Kühl\u00adschrank auf {fridgeHeat} oder kälter. Lass Luft zwischen ihnen.',
    slab: 'Im Kühl\u00adschrank',
    then: 'dann gehen sie langsam',
    spoken: '{fridgeHeat} oder kälter. Stell die Laibe hinein, mit Luft dazwischen.',
  },
  'proof.retard': {
    headline: 'Lass die Laibe im Kühl\u00adschrank',
    detail: 'Nächster Blick: {time}.',
    slab: 'Jetzt nachsehen',
    then: 'und sagen, was du siehst',
    spoken: 'Nächster Blick: {time}. Lass die Laibe im Kühl\u00adschrank.',
  },
  'proof.look': {
    headline: 'Sieh nach einem kalten Laib',
    detail: 'Ist er in der Kälte gewachsen? Die Delle kommt zuletzt.',
    slab: 'Nachgesehen',
    then: 'dann entscheidest du',
    spoken: 'Sieh nach einem kalten Laib. Sag, was du siehst.',
  },
  'proof.warm': {
    headline: 'Lass die Laibe warm gehen',
    detail: 'Du wirst gebraucht: {time}. Lass sie zugedeckt.',
    slab: 'Jetzt nachsehen',
    then: 'und eine Delle drücken',
    spoken: 'Um {time} wirst du gebraucht. Lass die Laibe zugedeckt.',
  },
  'proof.soon': {
    headline: 'Lass die Laibe warm gehen',
    detail: 'Nächster Blick: {time}. Der Ofen heizt solange.',
    slab: 'Jetzt nachsehen',
    then: 'und eine Delle drücken',
    spoken: 'Nächster Blick: {time}. Der Ofen heizt solange.',
  },
  'proof.poke': {
    headline: 'Sieh nach einem warmen Laib',
    detail: 'Bemehlter Finger, 1 cm tief. Schau auf die Delle.',
    slab: 'Nachgesehen',
    then: 'dann entscheidest du',
    spoken: 'Sieh nach einem warmen Laib. Einen Zentimeter tief, mit bemehltem Finger.',
  },
};
export const standOutWords: InTongue<typeof english.standOutWords> = {
  'proof.warm': {
    ...proof['proof.warm'],
    headline: 'Lass die Laibe draußen stehen',
    detail: 'Du wirst gebraucht: {time}. Lass sie zugedeckt.',
    spoken: '{minutes} stehen sie draußen. Um {time} wirst du gebraucht.',
  },
  'proof.soon': {
    ...proof['proof.soon'],
    headline: 'Lass die Laibe draußen stehen',
  },
  'proof.poke': {
    ...proof['proof.poke'],
    headline: 'Sieh nach einem Laib, der draußen stand',
    spoken:
      'Sieh nach einem Laib, der draußen stand. Drück eine Delle, dann schau, wie er gewachsen ist.',
  },
};
