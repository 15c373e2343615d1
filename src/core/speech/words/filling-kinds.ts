import { inTongue } from '../tongue.ts';
import type { FillingKind } from '../../formula/filling-facts.ts';

/** What a kind of filling is called. */
export const fillingKinds: Readonly<Record<FillingKind, string>> = inTongue(
  'filling-kinds',
  'fillingKinds',
  {
    driedFruit: 'dried fruit',
    candiedPeel: 'candied peel',
    nuts: 'nuts',
    seeds: 'seeds',
    sesame: 'sesame',
    chocolate: 'chocolate',
    dryOlives: 'dry-cured olives, new pack',
    brinedOlives: 'olives in brine',
    driedTomato: 'dried tomatoes, not in oil',
    inOil: 'vegetables or herbs in oil',
    driedHerbs: 'dried herbs',
    freshHerbs: 'fresh herbs',
    hardCheese: 'hard, aged, pasteurised cheese',
    freshCheese: 'fresh or soft cheese',
    roastVegetables: 'roast vegetables',
    cookedPotato: 'cooked potato',
    rawOnion: 'raw onion',
    cookedGrain: 'cooked grain, porridge',
    rolledOats: 'rolled oats',
    curedMeat: 'cured or cooked meat',
    cookedEgg: 'cooked egg',
    freshFruit: 'fresh fruit',
  },
);

/** Beside what the table says of a filling. */
const fillingGuess = 'From memory. Go by its packet.';

/** Of these, what is said by itself. */
export const fillingKindsLines = inTongue('filling-kinds', 'fillingKindsLines', {
  fillingGuess,
});
