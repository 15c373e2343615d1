import type * as english from '../words/small.ts';
import type { InTongue } from '../tongue.ts';

export const small: InTongue<typeof english.small> = {
  title: 'Kleine Hände',
  back: 'Sicht der Großen',
  baker: 'Die Großen',
  you: 'Du',
  palm: 'mit der ganzen Hand',
  held: 'Das halten Erwachsene',
  raw: 'Roher Teig kann krank machen. Nicht naschen, danach Hände waschen.',
  whose: 'Wessen Hände helfen?',
  off: 'Aus',
};

export const smallAges: InTongue<typeof english.smallAges> = {
  '4-6': '4 bis 6 Jahre',
  '7-9': '7 bis 9 Jahre',
  '10-12': '10 bis 12 Jahre',
};

export const handMark: InTongue<typeof english.handMark> = {
  title: 'Eure Zeichen',
  detail: 'Jedes Kind wählt eins. Noch ein Druck legt es zurück.',
  pick: 'Wähl dein Zeichen',
  shape: 'Leg dein Zeichen zu deinem Brot.',
  find: 'Finde dein Zeichen.',
};

export const handMarks: InTongue<typeof english.handMarks> = {
  star: 'Stern',
  moon: 'Mond',
  fish: 'Fisch',
  leaf: 'Blatt',
  boat: 'Boot',
  sun: 'Sonne',
};

export const waitPath: InTongue<typeof english.waitPath> = {
  begins: 'Das Warten beginnt.',
  some: 'Die Schnecke ist unterwegs.',
  half: 'Die Schnecke hat den halben Weg.',
  most: 'Die Schnecke ist über den halben Weg.',
  near: 'Die Schnecke ist fast da.',
  there: 'Die Schnecke ist da.',
};

export const countGame: InTongue<typeof english.countGame> = {
  corners: 'Tipp für jedes Falten eine Ecke an',
  pieces: 'Tipp für jedes Stück eins an',
  baskets: 'Tipp für jeden Korb einen an',
  rounds: 'Tipp für jedes runde Stück eins an',
  nth: {
    first: 'Erstes',
    second: 'Zweites',
    third: 'Drittes',
    fourth: 'Viertes',
  },
};

export const readAnswer: InTongue<typeof english.readAnswer> = {
  title: 'Für Erwachsene',
  back: 'Zurück',
  again: 'Das war es nicht. Lies es noch einmal.',
  shut: 'Genug für jetzt. Backt weiter und versucht es später.',
};

export const readings4: InTongue<typeof english.readings4> = {
  cellar: {
    text: 'Der Krug steht im Keller, die Dose auf dem Dachboden. Die Schale steht im Schuppen. Das Tuch hängt im Flur.',
    ask: 'Was steht im Schuppen?',
    answers: {
      right: 'Schale',
      one: 'Krug',
      two: 'Dose',
      three: 'Tuch',
    },
  },
  order: {
    text: 'Roggen kauften sie nach Hafer. Hafer kam nach Weizen und Gerste nach Roggen.',
    ask: 'Was kauften sie zuletzt?',
    answers: {
      right: 'Gerste',
      one: 'Roggen',
      two: 'Hafer',
      three: 'Weizen',
    },
  },
  days: {
    text: 'Am Montag gab es Pflaumen, am Dienstag Feigen. Am Donnerstag gab es Birnen, am Sonntag Datteln.',
    ask: 'Was gab es am Donnerstag?',
    answers: {
      right: 'Birnen',
      one: 'Pflaumen',
      two: 'Feigen',
      three: 'Datteln',
    },
  },
  weights: {
    text: 'Der braune Sack ist leichter als der graue. Der weiße ist am schwersten. Der grüne wiegt weniger als der braune.',
    ask: 'Welcher Sack ist am leichtesten?',
    answers: {
      right: 'grüne',
      one: 'braune',
      two: 'graue',
      three: 'weiße',
    },
  },
  lane: {
    text: 'Die Fähre fährt vor dem Zug. Der Bus fährt nach dem Zug und die Tram nach dem Bus.',
    ask: 'Was fährt als Zweites?',
    answers: {
      right: 'Zug',
      one: 'Fähre',
      two: 'Bus',
      three: 'Tram',
    },
  },
};
