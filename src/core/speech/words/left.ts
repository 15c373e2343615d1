import { inTongue } from '../tongue.ts';

/** The days may be the clock's alone: it is asked, and one press lets the bake go on. */
export const clockAsk = inTongue('left', 'clockAsk', {
  care: 'Was the tablet’s clock wrong? Say so, and the bake goes on.',
  press: 'The clock was wrong',
  said: 'It stands as at your last press. Check the dough.',
} as const);

/** What was left for days is thrown away, never baked: it is past judging by its signs. */
export const left = inTongue('left', 'left', {
  levain: {
    headline: 'Throw this levain away',
    detail: 'It stood for days. Wash the jar hot and start again.',
    slab: 'Thrown away',
    then: 'then this bake is over',
    spoken: 'Throw this levain away. It stood for days.',
  },
  dough: {
    headline: 'Throw this dough away',
    detail: 'It was out for too long. Do not bake it.',
    slab: 'Thrown away',
    then: 'then this bake is over',
    spoken: 'Throw this dough away. It was out for too long.',
  },
  loaves: {
    headline: 'Throw these loaves away',
    detail: 'They lay in the fridge for days. Do not bake them.',
    slab: 'All thrown away',
    then: 'then this bake is over',
    spoken: 'Throw these loaves away. They lay in the fridge for days.',
  },
} as const);
