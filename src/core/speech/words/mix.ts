import { inTongue } from '../tongue.ts';
import { RAW_DOUGH, RAW_FLOUR } from './care.ts';
import type { StageWords } from '../words.ts';

export const mix = inTongue('mix', 'mix', {
  'mix.weigh': {
    headline: 'Weigh flour, water and levain',
    detail: 'All in one bowl. Zero the scale before each line.',
    slab: 'All weighed',
    then: 'then mix by hand',
    spoken: 'Weigh flour, water and levain. Zero the scale before each line.',
    care: RAW_FLOUR,
  },
  'mix.first': {
    headline: 'Mix until no flour is dry',
    detail: 'One wet hand, no salt yet. Scrape the bowl down.',
    slab: 'It’s mixed',
    then: 'then the dough rests',
    spoken: 'Mix until no flour is dry. No salt yet.',
    care: RAW_DOUGH,
  },
  'mix.rest': {
    headline: 'Let the dough rest',
    detail: 'Cover it and wipe the bench. Salt at {time}.',
    slab: 'Salt it now',
    then: 'then weigh the salt',
    spoken: '{time} is when the salt goes in. Cover the bowl.',
  },
  'mix.salt': {
    headline: 'Weigh the salt and any second water',
    detail: 'Salt over the dough first, then the water.',
    slab: 'It’s in',
    then: 'then work it in',
    spoken: 'Weigh the salt and any second water. Salt goes on first.',
    care: RAW_DOUGH,
  },
  'mix.work': {
    headline: 'Work the salt in',
    detail: 'Pinch and turn until nothing slips or feels gritty.',
    slab: 'It’s worked in',
    then: 'then measure the dough',
    spoken: 'Work the salt in. Pinch and turn until nothing slips.',
    care: RAW_DOUGH,
  },
  'mix.temperature': {
    headline: 'Take the dough’s temperature',
    detail: 'Probe in the middle. Key in what it shows.',
    slab: 'Key it in',
    then: 'then leave it to rise',
    spoken: 'Take the dough’s temperature. Probe in the middle, then key it in.',
  },
} satisfies Record<string, StageWords>);
