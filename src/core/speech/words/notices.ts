import { inTongue } from '../tongue.ts';

/** Why there is no recipe, by the reason's key. Each says what to change. */
export const reasons = inTongue('notices', 'reasons', {
  formulaUnreadable:
    'This formula cannot be read at {path}: {expected} was wanted, {got} came. Mend it there.',
  loavesOutside: '{got} loaves will not do. Choose a whole number, {least} to {most}.',
  pieceOutside: 'A piece of {got} will not do. Choose {least} to {most}.',
  breadOutside: 'A baked loaf of {got} will not do. Choose {least} to {most}.',
  amountOutside: '{got} of it makes no dough. Enter what is there.',
  binEmpty: 'There is too little {flour} even to feed the starter. Buy some, or change the flours.',
  bowlFlours: 'The flours in the bowl are {sum} % together. Make them 100.',
  lineUnknown: 'This formula has no {line}. Choose a line that it has.',
  levainTooWet:
    'The levain brings {short} % of flour too much water. Use less levain, or a stiffer one.',
  perishableRetarded:
    '{filling} spoils in a long rise. Leave it out, or add it cold at shaping and bake within 2 hours.',
  levainFlourShort:
    'The levain wants {short} more {flour} than the dough has. Feed it another flour, or use less.',
  waterShort: 'The levain brings {short} too much water. Use less levain, or a stiffer one.',
} as const);

/** What is unusual about a recipe, by the warning's key. The baker may go on all the same. */
export const warnings = inTongue('notices', 'warnings', {
  saltHigh: 'Salt is {salt} %, over the usual {most}. The dough will rise slowly.',
  saltLow: 'Salt is {salt} %, under the usual {least}. The dough will rise fast and slack.',
  saltWithFilling:
    'Salt is {salt} % with the {bring} that the filling brings; {most} is the most that is usual. Take some out of the dough.',
  wetFilling:
    'With what the filling brings, water is {water} % of flour; over {most} runs. Drain it and dry it well.',
  perishableFilling:
    '{filling} spoils: out of the fridge at final shape only, in the oven within 2 hours. The bread stays cold too.',
  cheeseStands:
    '{filling} may stand at up to {most} if it is hard, aged and pasteurised. Other cheese spoils.',
  fillingFrozen: '{filling}: let it thaw in the fridge, then drain it and dry it.',
  fillingCold: '{filling} is cold: take it out an hour before, or it chills the dough.',
  hydrationOutside:
    'Water is {hydration} % of flour; {least} to {most} is usual. Hold some of it back at first.',
  pffOutside:
    '{pff} % of the flour is in the levain; {least} to {most} is usual. Look at the dough often.',
  fillingOutside:
    'Filling is {share} % of the dough; {least} to {most} is usual. Too much tears the dough.',
  feedDisagrees:
    'Feed says {flour} flour to {water} water; the levain is {hydration} %. The water was set by the levain.',
  fillingAtShaping: 'No sheet fold takes the filling in. Add it at the final shape.',
  heavyDough: '{dough} is a lot for one bowl by hand. Mix it in bowls of up to {most}.',
  processOutside:
    '{part}: {minutes} min; {least} to {most} is usual. Look at the dough, not the clock.',
  riseOutside: 'A rise of {rise} %; {least} to {most} is usual. Look often near the end.',
  scoopNeedsTin: 'Spooned dough runs: it needs a tin to hold it.',
  ryeOutside:
    '{rye} % rye is more than the clock knows; it knows up to {most}. Trust your eyes, not its hours.',
  fridgeOutside: 'Fridge at {fridge}; {least} to {most} is wanted. Over {most}: turn it colder.',
} as const);

/** What a swap did, by its key. */
export const swaps = inTongue('notices', 'swaps', {
  swapped: '{name} for {was}, as much by weight.',
  swappedAllergens: '{name} for {was}, as much by weight. The label has to name: {allergens}.',
  herbsDried: '{name}: half the weight of fresh, {pct} %. By volume books say a third.',
  herbsFresh: '{name}: twice the weight of dried, {pct} %. By volume books say three times.',
} as const);

/** Why a step is not on offer, by the reason's key. Each says what to change. */
export const stepReasons = inTongue('notices', 'stepReasons', {
  spoonWantsTin: 'Spooned dough runs. First choose the tin to bake in.',
  sheetWantsFilling: 'A sheet is there to take a filling. Add one first.',
  spoonNoSheet: 'Spooned dough is too soft for a sheet.',
  touchesFull: 'There are {most} folds, as many as can be. First take one out.',
  noFold: 'There is no fold to take out.',
} as const);

/** Why a rehearsal has not all of the Book, by the reason's key. */
export const lentReasons = inTongue('notices', 'lentReasons', {
  lentUnread: 'Your own breads could not be read. Open the rehearsal once more.',
} as const);

/** Names of a process's parts, for `processOutside`. */
export const processParts = inTongue('notices', 'processParts', {
  rest: 'Rest',
  fold: 'Gap before a fold',
  laminate: 'Sheet fold after the mix',
  benchRest: 'Bench rest',
  counter: 'On the counter',
  retard: 'In the fridge',
  warm: 'Warm proof',
  preheat: 'Oven heating',
  lidded: 'Lid or steam',
  open: 'Open baking',
  recovery: 'Oven heating again',
  cool: 'Cooling',
} as const);
