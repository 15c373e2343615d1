import { inTongue } from '../tongue.ts';

/** What a kitchen cannot do for a bake, by the warning's key: shown and said at its step. */
export const kitchenWarnings = inTongue('kitchen-warnings', 'kitchenWarnings', {
  bowlsSplit: 'Mix {count} bowls of {grams}. Start them {minutes} apart.',
  bowlsShort: 'It needs {count} bowls of {grams}. Borrow some, or mix in batches.',
  potSmall: 'A pot of {got} litres is too small. Make these loaves lighter.',
  fridgeWarm: 'Your fridge is at {got}: turn it colder first.',
  fridgeGroups: 'Cooling these takes the fridge {got} h. Chill {count} at a time.',
  fridgeSmall: 'The fridge takes {count} of {got} loaves. Bake the rest first.',
  potsNotHot: 'Cold dough can crack your pots. Use bare iron, or a tin.',
  bakeHeatShort: 'Your oven stops at {got}. Bake longer: go by the crust.',
  preheatShort: 'Your oven stops at {got}. Heat it longer.',
  coldAsk: 'Cold dough can chip hot enamel: ask its maker first.',
  potSmallHere: 'This pot is too small for the loaf. Use another.',
  ovenDial: 'Your dial is off. For the pot, set it to {dial}.',
  ovenDialStone: 'Your dial is off. For the stone, set it to {dial}.',
  ovenSlow: 'Your oven takes {got} min. Wait that long, past the call.',
  knobPlastic: 'A lid knob here is plastic. Take it off while cold.',
  parchmentLow: 'Your parchment takes only {got}. Leave it out.',
} as const);
