import { inTongue } from '../tongue.ts';
import type { StageWords } from '../words.ts';

export const levain = inTongue('levain', 'levain', {
  'levain.feed': {
    headline: 'Feed the starter',
    detail: 'Weigh each line into a clean jar, then stir.',
    slab: 'It’s fed',
    then: 'then leave it to rise',
    spoken: 'Feed the starter. Weigh each line into a clean jar, then stir.',
    care: 'Pink, orange or mould: throw it all away. Cover the jar loosely, never sealed.',
  },
  'levain.ripening': {
    headline: 'Leave the levain to rise',
    detail: 'Next look at {time}. Keep it warm and still.',
    slab: 'Look now',
    then: 'and say what you see',
    spoken: '{time} is the next look. Leave the levain to rise.',
    care: 'Keep the lid loose: a sealed jar can burst.',
  },
  'levain.look': {
    headline: 'Look at the levain',
    detail: 'Say what you see. “Not sure” is an answer.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'Look at the levain. Say what you see.',
    care: 'Pink, orange or mould: throw it all away.',
  },
  'levain.ripe': {
    headline: 'Keep back {keepBack} of starter',
    detail: 'Clean jar, loose lid, into the fridge.',
    slab: 'It’s kept back',
    then: 'then weigh the flour',
    spoken: '{keepBack} of starter to keep back. Loose lid, into the fridge.',
    // Who called it ripe out of its wait has not been asked for its colour.
    care: 'Pink, orange or mould: throw it all away. Cover the jar loosely, never sealed.',
  },
} satisfies Record<string, StageWords>);
