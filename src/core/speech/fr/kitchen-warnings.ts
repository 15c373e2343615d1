import type * as english from '../words/kitchen-warnings.ts';
import type { InTongue } from '../tongue.ts';

export const kitchenWarnings: InTongue<typeof english.kitchenWarnings> = {
  bowlsSplit: 'Mélangez en {count} saladiers de {grams}. Commencez-les à {minutes} d’écart.',
  bowlsShort: 'Il faut {count} saladiers de {grams}. Empruntez-en, ou mélangez tour à tour.',
  potSmall: 'Une cocotte de {got} litres est trop petite. Faites ces pains plus légers.',
  fridgeWarm: 'Votre frigo est à {got} : réglez-le d’abord plus froid.',
  fridgeGroups: 'Refroidir tout cela prend {got} h au frigo. Mettez-en {count} à la fois.',
  fridgeSmall: 'Le frigo prend {count} pains sur {got}. Cuisez le reste d’abord.',
  potsNotHot: 'La pâte froide peut fendre vos cocottes. Fonte nue, ou un moule.',
  bakeHeatShort: 'Votre four s’arrête à {got}. Cuisez plus longtemps : voyez la croûte.',
  preheatShort: 'Votre four s’arrête à {got}. Chauffez plus longtemps.',
  coldAsk: 'La pâte froide peut écailler l’émail chaud : demandez d’abord au fabricant.',
  potSmallHere: 'Cette cocotte est trop petite pour le pain. Prenez-en une autre.',
  ovenDial: 'Votre bouton est décalé. Pour la cocotte, réglez sur {dial}.',
  ovenDialStone: 'Votre bouton est décalé. Pour la pierre, réglez sur {dial}.',
  ovenSlow: 'Votre four met {got} min. Attendez autant, même après l’appel.',
  knobPlastic: 'Un bouton de couvercle ici est en plastique. Ôtez-le à froid.',
  parchmentLow: 'Votre papier cuisson ne tient que {got}. Passez-vous-en.',
};
