import { inTongue } from '../tongue.ts';
import type { Option } from '../words.ts';

export type VerdictOn = 'levain' | 'bulk' | 'loaf' | 'warm' | 'poke';
/** The three answers everywhere. */
export type VerdictAct = 'ready' | 'notYet' | 'over';

export interface VerdictWords {
  readonly headline: string;
  /** Label on the slab or a tile, and what follows when it is pressed. */
  readonly acts: Readonly<Record<VerdictAct, { readonly label: string; readonly then: string }>>;
  /** Label of going on all the same with what is over, where "it's ready" would not say so. */
  readonly despite?: string;
  /** What the signs say; the baker may always go on. */
  readonly because: Readonly<Record<VerdictAct | 'unsure', string>>;
}

/** What cold loaves may be chosen for besides the three answers. */
export type MoreAct = 'standOut' | 'flat';

/** Out of the fridge for a while, or a new goal; the first is told with why it is the likeliest. */
export const moreActs: Readonly<
  Record<MoreAct, { readonly label: string; readonly then: string }>
> = inTongue('verdicts', 'moreActs', {
  standOut: { label: 'Leave them out', then: 'they warm up and rise' },
  flat: { label: 'Bake them flat', then: 'in an oiled tray, now' },
});
const standOutBecause =
  'They have hardly grown and spring back. Leave them out, then look. You may go on.';
/** The same, once it is reckoned for how long. */
const standOutFor =
  'They have hardly grown and spring back. Leave them out {minutes}, then look. You may go on.';
/** On the slab then: bigger words leave the sentence to be read on. */
const standThen = '{minutes}, then look';
/** Of loaves that stood out and spring back once more. */
const standOnFor = 'Not there yet: leave it out {minutes}, then look. You may go on.';

export const verdicts: Readonly<Record<VerdictOn, VerdictWords>> = inTongue(
  'verdicts',
  'verdicts',
  {
    levain: {
      headline: 'Choose for the levain',
      acts: {
        ready: { label: 'It’s ripe', then: 'then keep some back' },
        notYet: { label: 'Not yet', then: 'look again later' },
        over: { label: 'Past it: use now', then: 'then keep some back' },
      },
      because: {
        ready: 'It has doubled and stands domed: ripe. You may go on.',
        notYet: 'It needs more time in a warm spot. You may go on all the same.',
        over: 'It has dipped: use it within the hour. You may wait, but it gets sharper.',
        unsure: 'The signs do not agree. Look again soon, or go on if your hands say so.',
      },
    },
    bulk: {
      headline: 'Choose for the dough',
      acts: {
        ready: { label: 'It’s ready', then: 'then shape it' },
        notYet: { label: 'Not yet', then: 'look again later' },
        over: { label: 'Gone over', then: 'then bake it flat' },
      },
      despite: 'Go on anyway',
      because: {
        ready: 'Domed, full of bubbles, and it jiggles: ready. You may go on.',
        notYet: 'It is still tight: give it time or warmth. You may go on all the same.',
        over: 'It has fallen and runs: bake it flat now. You may still divide it.',
        unsure: 'The signs do not agree. Look again soon, or go on if your hands say so.',
      },
    },
    loaf: {
      headline: 'Choose for the loaves',
      acts: {
        ready: { label: 'They’re ready', then: 'then to the oven' },
        notYet: { label: 'Not yet', then: 'look again later' },
        over: { label: 'Gone over', then: 'bake from cold, now' },
      },
      because: {
        ready: 'They have grown and they jiggle: ready to bake. You may go on.',
        notYet: 'They have grown little: leave them longer in the cold. You may go on.',
        over: 'Over the rim: bake now, from cold, with a shallow cut. Far gone: bake them flat.',
        unsure: 'A cold dent alone says little. Look again soon, or go on.',
      },
    },
    warm: {
      headline: 'Choose for the loaves',
      acts: {
        ready: { label: 'They’re ready', then: 'then to the oven' },
        notYet: { label: 'Not yet', then: 'look again later' },
        over: { label: 'Gone over', then: 'bake now, shallow cut' },
      },
      because: {
        ready: 'The dent comes back slowly: ready to bake. You may go on.',
        notYet: 'It springs back: give it more time. You may go on all the same.',
        over: 'The dent stays: bake now, with a shallow cut. Far gone: bake them flat.',
        unsure: 'Press once more in another spot. Look again soon, or go on.',
      },
    },
    poke: {
      headline: 'Choose for this loaf',
      acts: {
        ready: { label: 'It’s ready', then: 'then into the oven' },
        notYet: { label: 'Not yet', then: 'it stays out a while' },
        over: { label: 'Gone over', then: 'bake it now, shallow cut' },
      },
      because: {
        ready: 'It has grown and the dent comes back slowly: ready. You may go on.',
        notYet: 'Not there yet: leave it out a while. You may go on.',
        over: 'The dent stays: bake it now, from cold, with a shallow cut.',
        unsure: 'A cold dent alone says little. You may go on.',
      },
    },
  },
);

/** A ready dough that goes to the fridge next goes on for hours as it cools: no time to lose. */
const readyForCold = 'Ready, and it goes on in the fridge: divide it about now.';

/** Pink, orange or mould in the levain: there is no going on with it. */
export const discardLevain = inTongue('verdicts', 'discardLevain', {
  headline: 'Throw this levain away',
  detail: 'Pink, orange or mould is not for baking. Wash the jar hot.',
  slab: { value: 'discard', label: 'End this bake' } satisfies Option,
  then: 'start again from clean starter',
  spoken: 'Throw this levain away. Pink, orange or mould is not for baking.',
} as const);

/** Of these, what is said by itself. */
export const verdictsLines = inTongue('verdicts', 'verdictsLines', {
  standOutBecause,
  standOutFor,
  standThen,
  standOnFor,
  readyForCold,
});
