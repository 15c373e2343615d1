import { inTongue } from '../tongue.ts';
import type { StageWords } from '../words.ts';

/** In the fridge no minute is foretold: its sentences name the next look, its window whole hours. */
const PROOF = {
  'proof.counter': {
    headline: 'Leave the loaves out',
    detail: 'Fridge at {time}. Make room for them now.',
    slab: 'Chill them now',
    then: 'then into the fridge',
    spoken: '{time} is when they go in the fridge. Make room now.',
  },
  'proof.toFridge': {
    headline: 'Put the loaves in the fridge',
    detail: 'Fridge at {fridgeHeat} or colder. Leave gaps between them.',
    slab: 'In the fridge',
    then: 'then they rise slowly',
    spoken: '{fridgeHeat} or colder. Put the loaves in, gaps between them.',
  },
  'proof.retard': {
    headline: 'Leave the loaves in the fridge',
    detail: 'Next look at {time}.',
    slab: 'Look now',
    then: 'and say what you see',
    spoken: '{time} is the next look. Leave the loaves in the fridge.',
  },
  'proof.look': {
    headline: 'Look at a cold loaf',
    detail: 'Has it grown in the cold? The dent comes last.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'Look at a cold loaf. Say what you see.',
  },
  'proof.warm': {
    headline: 'Let the loaves rise warm',
    detail: 'You are needed at {time}. Keep them covered.',
    slab: 'Look now',
    then: 'and press a dent',
    spoken: '{time} is when you are needed. Keep the loaves covered.',
  },
  'proof.soon': {
    headline: 'Let the loaves rise warm',
    detail: 'Next look at {time}. The oven heats meanwhile.',
    slab: 'Look now',
    then: 'and press a dent',
    spoken: '{time} is the next look. The oven heats meanwhile.',
  },
  'proof.poke': {
    headline: 'Look at a warm loaf',
    detail: 'Floured finger, 1 cm in. Watch the dent.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'Look at a warm loaf. One centimetre in, with a floured finger.',
  },
} satisfies Record<string, StageWords>;

export const proof = inTongue('proof', 'proof', PROOF);

/** Loaves that stand out after the fridge, at the stages of a warm proof. */
export const standOutWords = inTongue('proof', 'standOutWords', {
  'proof.warm': {
    ...PROOF['proof.warm'],
    headline: 'Leave the loaves out',
    detail: 'You are needed at {time}. Keep them covered.',
    spoken: '{minutes} on the counter. You are needed at {time}.',
  },
  'proof.soon': {
    ...PROOF['proof.soon'],
    headline: 'Leave the loaves out',
  },
  'proof.poke': {
    ...PROOF['proof.poke'],
    headline: 'Look at a loaf left out',
    spoken: 'Look at a loaf left out. Press a dent, then see its growth.',
  },
} satisfies Record<string, StageWords>);
