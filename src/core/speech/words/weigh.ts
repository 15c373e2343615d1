import { inTongue } from '../tongue.ts';
import type { TickedList } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';
import { SCATTER } from './bulk.ts';

/** One line that is ticked. {grams} is digits on the screen and words in the air (`said`). */
const line = (detail: string, then: string): StageWords => ({
  headline: '{grams} {name}',
  detail,
  slab: 'It’s in',
  then,
  spoken: '{grams} of {name}.',
});

/**
 * What a weigh card says for a line of each list, and what is said of each filling as it goes in. {next} of
 * `weighThen` names the line after it.
 */
export const weighWords: Readonly<Record<TickedList, StageWords>> = inTongue(
  'weigh',
  'weighWords',
  {
    feed: line('Into the clean jar.', 'then the next line'),
    first: line('Into the bowl. Zero the scale first.', 'then the next line'),
    second: line('Over the dough. Zero the scale first.', 'then the next line'),
    filling: { ...line(SCATTER.detail, SCATTER.then), slab: SCATTER.slab },
    worked: {
      ...line('Work it through evenly, the same in each loaf.', 'then give it its shape'),
      spoken: '{grams} of {name}. Work it in.',
    },
  },
);

/** Lines that are no flour and no filling, by their item: what is kept of them is the English name. */
export const weighNames = inTongue('weigh', 'weighNames', {
  water: 'water',
  levain: 'levain',
  salt: 'salt',
  secondWater: 'second water',
  seed: 'starter',
} as const);

/** The line of a soaker's water, beside that of what soaks in it. */
const soakerWater = 'water for {name}';

/** Under the slab's word, when the next line is known, and at the last one. */
export const weighThen = inTongue('weigh', 'weighThen', {
  next: 'then {name}',
  last: 'that is the last one',
} as const);

/** Where the kitchen's scale shows steps too wide for the line. */
const weighRough = 'Your scale is rough for so little. Use a finer one.';

/** Of these, what is said by itself. */
export const weighLines = inTongue('weigh', 'weighLines', {
  soakerWater,
  weighRough,
});
