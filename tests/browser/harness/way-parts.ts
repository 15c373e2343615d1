/** Acts that more than one bread's way has, as the log tells them. */

/** What is at hand, the feed, the levain's signs; then the mix, with two flours. */
export const TO_THE_BOWL = [
  'readThrough',
  '15 answers',
  'levainRipe',
  'starterKept',
  '4 answers',
  'mixed',
  '2 answers',
  'workedIn',
  'doughTemperature',
];

/** A fold, the sheet with each of so many fillings, and a fold. */
export const sheetActs = (fillings: number): string[] => [
  'folded',
  'spread',
  `${fillings} answers`,
  'rolled',
  'folded',
];

export const SHAPED = ['5 answers', 'bulkReady', 'divided', 'preshaped', 'shaped', 'inBaskets'];
export const COLD_PROOF = ['inFridge', '5 answers', 'loafReady'];
export const HANDED_OVER = ['handedOver', 'noted'];

/** One load, from the last look at its loaf on; what is asked before it and how its steam goes. */
export const loadActs = (asked: number, steam: 'lidOff' | 'steamOut'): string[] => [
  '2 answers',
  'pokeReady',
  `${asked} answers`,
  'scored',
  'loaded',
  steam,
  '3 answers',
  'crustReady',
  'unloaded',
];

/** A load that follows in the same firing: the list before the oven was gone through. */
export const laterActs = (steam: 'lidOff' | 'steamOut'): string[] =>
  loadActs(0, steam).filter((act) => act !== '0 answers');

export const RING_TO_BOWL = ['levain.look', 'mix.salt'];
/** A dough told to have doubled goes straight into the fridge: there is no counter to wait for. */
export const RING_COLD = ['bulk.look', 'shape.finalShape', 'proof.look'];

export const WAITS_TO_PROOF = [
  'Leave the levain to rise',
  'Let the dough rest',
  'Leave the dough to rise',
  'Let the pieces rest',
];
export const WAITS_COLD = ['Leave the loaves in the fridge'];
