import type * as english from '../words/notices.ts';
import type { InTongue } from '../tongue.ts';

export const reasons: InTongue<typeof english.reasons> = {
  formulaUnreadable:
    'Recette illisible à {path} : il fallait {expected}, il y a {got}. Corrigez là.',
  loavesOutside: '{got} pains ne vont pas. Choisissez un nombre entier, {least} à {most}.',
  pieceOutside: 'Un pâton de {got} ne va pas. Choisissez {least} à {most}.',
  breadOutside: 'Un pain cuit de {got} ne va pas. Choisissez {least} à {most}.',
  amountOutside: 'Avec {got}, on ne fait pas de pâte. Entrez ce qu’il y a.',
  binEmpty:
    'Trop peu de farine, même pour le levain-chef : {flour}. Achetez-en, ou changez les farines.',
  bowlFlours: 'Les farines du saladier font {sum} % ensemble. Mettez-les à 100.',
  lineUnknown: 'Cette recette n’a pas cette ligne : {line}. Choisissez-en une qu’elle a.',
  levainTooWet:
    'Le levain apporte trop d’eau : {short} % de la farine. Mettez-en moins, ou plus ferme.',
  perishableRetarded:
    'Se gâte dans une longue pousse : {filling}. Enlevez-la, ou ajoutez-la froide au façonnage et cuisez dans les 2 heures.',
  levainFlourShort:
    'Le levain veut {short} de plus que la pâte n’en a : {flour}. Donnez-lui une autre farine, ou mettez-en moins.',
  waterShort: 'Le levain apporte {short} d’eau de trop. Mettez-en moins, ou plus ferme.',
};

export const warnings: InTongue<typeof english.warnings> = {
  saltHigh: 'Le sel est à {salt} %, plus que {most} d’habitude. La pâte lèvera lentement.',
  saltLow: 'Le sel est à {salt} %, moins que {least} d’habitude. La pâte lèvera vite et mollement.',
  saltWithFilling:
    'Le sel est à {salt} % avec les {bring} de la garniture ; d’habitude {most} au plus. Ôtez-en de la pâte.',
  wetFilling:
    'Avec la garniture, l’eau fait {water} % de la farine ; au-delà de {most}, la pâte coule. Égouttez et séchez bien.',
  perishableFilling:
    'Se gâte : {filling}. Hors du frigo au façonnage seulement, au four dans les 2 heures. Le pain reste aussi au froid.',
  cheeseStands:
    '{filling} : peut attendre jusqu’à {most} si c’est un fromage dur, affiné et pasteurisé. Tout autre se gâte.',
  fillingFrozen: '{filling} : décongelez au frigo, puis égouttez et séchez.',
  fillingCold: '{filling} : sortez une heure avant, sinon cela refroidit la pâte.',
  hydrationOutside:
    'L’eau fait {hydration} % de la farine ; d’habitude {least} à {most}. Gardez-en un peu d’abord.',
  pffOutside:
    '{pff} % de la farine est dans le levain ; d’habitude {least} à {most}. Regardez souvent la pâte.',
  fillingOutside:
    'La garniture fait {share} % de la pâte ; d’habitude {least} à {most}. Trop déchire la pâte.',
  feedDisagrees:
    'Le rafraîchi dit {flour} de farine pour {water} d’eau ; le levain est à {hydration} %. L’eau suit le levain.',
  fillingAtShaping: 'Aucun étirage ne prend la garniture. Ajoutez-la au façonnage.',
  heavyDough:
    '{dough}, c’est beaucoup pour un saladier à la main. Mélangez en saladiers de {most} au plus.',
  processOutside:
    '{part} : {minutes} min ; d’habitude {least} à {most}. Regardez la pâte, pas l’heure.',
  riseOutside:
    'Une pousse de {rise} % ; d’habitude {least} à {most}. Regardez souvent vers la fin.',
  scoopNeedsTin: 'La pâte à la cuillère coule : il lui faut un moule.',
  ryeOutside:
    '{rye} % de seigle, plus que le calcul ne connaît ; {most} au plus. Fiez-vous à vos yeux, pas à ses heures.',
  fridgeOutside:
    'Frigo à {fridge} ; il faut {least} à {most}. Au-dessus de {most} : réglez plus froid.',
};

export const swaps: InTongue<typeof english.swaps> = {
  swapped: '{name} au lieu de {was}, même poids.',
  swappedAllergens: '{name} au lieu de {was}, même poids. L’étiquette doit nommer : {allergens}.',
  herbsDried: '{name} : la moitié du poids frais, {pct} %. En volume, les livres disent un tiers.',
  herbsFresh: '{name} : deux fois le poids sec, {pct} %. En volume, les livres disent trois fois.',
};

export const stepReasons: InTongue<typeof english.stepReasons> = {
  spoonWantsTin: 'La pâte à la cuillère coule. Choisissez d’abord le moule.',
  sheetWantsFilling: 'Un étirage prend une garniture. Ajoutez-en une d’abord.',
  spoonNoSheet: 'La pâte à la cuillère est trop molle pour un étirage.',
  touchesFull: 'Il y a {most} rabats, le maximum. Enlevez-en un d’abord.',
  noFold: 'Il n’y a pas de rabat à enlever.',
};

export const lentReasons: InTongue<typeof english.lentReasons> = {
  lentUnread: 'Vos propres pains n’ont pu être lus. Ouvrez l’essai encore une fois.',
};

export const processParts: InTongue<typeof english.processParts> = {
  rest: 'Repos',
  fold: 'Attente avant un rabat',
  laminate: 'Étirage après le mélange',
  benchRest: 'Détente',
  counter: 'Hors du frigo',
  retard: 'Au frigo',
  warm: 'Apprêt au chaud',
  preheat: 'Chauffe du four',
  lidded: 'Cou\u00advercle ou vapeur',
  open: 'Cuisson à décou\u00advert',
  recovery: 'Four à ré\u00adchauffer',
  cool: 'Ressuage',
};
