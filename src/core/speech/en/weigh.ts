import type { WeighList } from '../../formula/recipe.ts';
import type { StageWords } from '../words.ts';

/** One weighed line. {grams} is digits on the screen and words in the air (`said`). */
const line = (detail: string, then: string): StageWords => ({
  headline: '{grams} {name}',
  detail,
  slab: 'It’s in',
  then,
  spoken: '{grams} of {name}.',
});

/** What a weigh card says for a line of each list. {next} of `weighThen` names the line after it. */
export const weighWords: Readonly<Record<WeighList, StageWords>> = {
  feed: line('Into the clean jar.', 'then the next line'),
  first: line('Into the bowl. Zero the scale first.', 'then the next line'),
  second: line('Over the dough. Zero the scale first.', 'then the next line'),
  filling: line('Into a dish of its own, dry.', 'then the next line'),
};

/** The line of a soaker's water, beside that of what soaks in it. */
export const soakerWater = 'water for {name}';

/** Under the slab's word, when the next line is known, and at the last one. */
export const weighThen = { next: 'then {name}', last: 'that is the last one' } as const;

/** Where the kitchen's scale shows steps too wide for the line. */
export const weighRough = 'Your scale is rough for so little. Use a finer one.';
