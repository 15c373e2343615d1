import type * as english from '../words/heed.ts';
import type { InTongue } from '../tongue.ts';

export const heed: InTongue<typeof english.heed> = {
  beforeStart: {
    starter: { fridge: 'Il se réveille lentement du froid. Un second rafraîchi aide.' },
    flour: { short: 'Trouvez plus de farine, ou cuisez moins de pains.' },
    filling: {
      toPrepare: 'Grillez, égouttez, séchez-la pendant que le levain lève.',
      toastedDry: 'Ni fromage frais, ni viande, ni aliments cuits, ni ail à l’huile.',
    },
    pot: {
      metalKnob: 'Le fabricant permet-il la pâte froide dans la cocotte chaude ? Vérifiez d’abord.',
      plasticKnob: 'Ôtez le bouton avant de chauffer la cocotte.',
      clayOrGlass: 'La pâte froide peut la fendre. Prenez de la fonte nue, ou un moule.',
    },
    scale: {
      notZero: 'Appuyez sur zéro, le saladier vide dessus.',
      noScale: 'Cuillères et tasses trompent beaucoup. Empruntez une balance si possible.',
    },
    hands: { notYet: 'Lavez-vous les mains, puis répondez.' },
    fridge: {
      full: 'Libérez une étagère avant le façonnage.',
      warm: 'Réglez-le plus froid, et vérifiez ce soir.',
    },
  },
  beforeOven: {
    child: {
      close: 'Donnez à l’enfant une tâche à 1 m. Puis répondez.',
      withGrownUp: 'Tous deux restent à 1 m, s’il vous plaît.',
    },
    floor: {
      cluttered: 'Dégagez le sol devant le four. Puis répondez.',
      wet: 'Séchez le sol devant le four. Puis répondez.',
    },
    mitts: {
      wet: 'Prenez des gants secs : mouillés, ils brûlent. Puis répondez.',
      missing: 'Trouvez deux gants secs. Puis répondez.',
    },
    landing: { notYet: 'Libérez deux places qui supportent la chaleur.' },
    parchment: {
      unknown: 'Passez-vous-en, ou lisez sa limite sur la boîte.',
      rated: 'Coupez-le court : les longs bords brûlent.',
    },
    knob: {
      plastic: 'Four éteint. Ôtez le bouton une fois la cocotte froide.',
      plasticOff: 'Soulevez le couvercle, un gant sous le bord.',
    },
    blade: { notYet: 'Couvrez la lame, posez-la à portée. Puis répondez.' },
  },
  levainSigns: {
    colour: { pinkOrMould: 'Jetez tout. N’en faites pas de pain.' },
  },
};

export const heedLines: InTongue<typeof english.heedLines> = {
  listComplete: 'Liste finie.',
};
