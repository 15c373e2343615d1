import { inTongue } from '../tongue.ts';
import type { Option, Question } from '../words.ts';

const notSure: Option = { value: 'notSure', label: 'Not sure' };

/** The slab of each sign is what ready dough shows; nothing is filled in beforehand. */
export const levainSigns: readonly Question[] = inTongue('signs', 'levainSigns', [
  {
    item: 'colour',
    ask: 'What colour is it?',
    detail: 'Pink, orange or mould: throw it all away.',
    slab: { value: 'creamy', label: 'Creamy' },
    tiles: [{ value: 'pinkOrMould', label: 'Pink or mould' }, notSure],
  },
  {
    item: 'rise',
    ask: 'How far has it risen?',
    slab: { value: 'doubled', label: 'Doubled' },
    tiles: [{ value: 'some', label: 'By half' }, { value: 'little', label: 'A little' }, notSure],
  },
  {
    item: 'top',
    ask: 'What shape is the top?',
    slab: { value: 'domed', label: 'Domed' },
    tiles: [{ value: 'flat', label: 'Flat' }, { value: 'dipped', label: 'Dipped' }, notSure],
  },
  {
    item: 'bubbles',
    ask: 'How many bubbles are there?',
    slab: { value: 'many', label: 'Many' },
    tiles: [{ value: 'few', label: 'Few' }, { value: 'none', label: 'None' }, notSure],
  },
  {
    item: 'smell',
    ask: 'How does it smell?',
    slab: { value: 'fresh', label: 'Fresh, like yoghurt' },
    tiles: [{ value: 'sharp', label: 'Sharp' }, { value: 'flour', label: 'Like flour' }, notSure],
  },
]);

export const bulkSigns: readonly Question[] = inTongue('signs', 'bulkSigns', [
  {
    item: 'rise',
    ask: 'How far has it risen?',
    detail: 'Look at the mark on the tub or jar.',
    slab: { value: '100', label: 'Doubled' },
    tiles: [
      { value: '75', label: 'By three quarters' },
      { value: '50', label: 'By half' },
      { value: '25', label: 'By a quarter' },
      { value: '0', label: 'Not at all' },
      notSure,
    ],
  },
  {
    item: 'edge',
    ask: 'What shape is the edge?',
    detail: 'Where the dough meets the bowl.',
    slab: { value: 'domed', label: 'Domed' },
    tiles: [{ value: 'flat', label: 'Flat' }, { value: 'fallen', label: 'Fallen' }, notSure],
  },
  {
    item: 'bubbles',
    ask: 'How many bubbles at the side?',
    slab: { value: 'many', label: 'Many' },
    tiles: [{ value: 'some', label: 'Some' }, { value: 'none', label: 'None' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'How does it move when nudged?',
    slab: { value: 'jiggles', label: 'It jiggles' },
    tiles: [
      { value: 'firm', label: 'Firm' },
      { value: 'strings', label: 'Runny, strings' },
      notSure,
    ],
  },
  {
    item: 'top',
    ask: 'What is the top like?',
    slab: { value: 'smooth', label: 'Smooth' },
    tiles: [{ value: 'torn', label: 'Torn' }, { value: 'sticky', label: 'Sticky' }, notSure],
  },
]);

export const loafSigns: readonly Question[] = inTongue('signs', 'loafSigns', [
  {
    item: 'grown',
    ask: 'How much has it grown?',
    detail: 'Since it went into the fridge.',
    slab: { value: 'grown', label: 'Clearly grown' },
    tiles: [
      { value: 'little', label: 'A little' },
      { value: 'none', label: 'Not at all' },
      notSure,
    ],
  },
  {
    item: 'rim',
    ask: 'Where is it against the rim?',
    detail: 'The rim of its basket or tin.',
    slab: { value: 'level', label: 'Level' },
    tiles: [{ value: 'below', label: 'Below' }, { value: 'above', label: 'Above' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'How does it move when nudged?',
    slab: { value: 'jiggles', label: 'It jiggles' },
    tiles: [{ value: 'firm', label: 'Firm' }, notSure],
  },
  {
    item: 'skin',
    ask: 'What is the skin like?',
    slab: { value: 'smooth', label: 'Smooth' },
    tiles: [{ value: 'dry', label: 'Dry' }, { value: 'torn', label: 'Torn' }, notSure],
  },
  {
    item: 'dent',
    ask: 'What does a dent do?',
    detail: 'Floured finger, 1 cm in. Cold dough: a hint only.',
    slab: { value: 'slowly', label: 'Comes back slowly' },
    tiles: [
      { value: 'springs', label: 'Springs back' },
      { value: 'stays', label: 'Stays' },
      notSure,
    ],
  },
]);

export const pokeSigns: readonly Question[] = inTongue('signs', 'pokeSigns', [
  {
    item: 'grown',
    ask: 'How much has it grown?',
    slab: { value: 'grown', label: 'Clearly grown' },
    tiles: [{ value: 'little', label: 'A little' }, notSure],
  },
  {
    item: 'dent',
    ask: 'What does a dent do?',
    detail: 'Floured finger, 1 cm in. Cold dough: a hint only.',
    slab: { value: 'slowly', label: 'Comes back slowly' },
    tiles: [
      { value: 'springs', label: 'Springs back' },
      { value: 'stays', label: 'Stays' },
      notSure,
    ],
  },
]);

/** How the base of a loaf is heard that sits in a tin. */
const tinBase = 'Dry mitts. Tip it out of its tin and knock.';

/** A warm loaf: the dent decides. */
export const warmSigns: readonly Question[] = inTongue('signs', 'warmSigns', [
  {
    item: 'dent',
    ask: 'What does a dent do?',
    detail: 'Floured finger, 1 cm in.',
    slab: { value: 'slowly', label: 'Comes back slowly' },
    tiles: [
      { value: 'springs', label: 'Springs back' },
      { value: 'stays', label: 'Stays' },
      notSure,
    ],
  },
  // Asked of loaves that came out of the fridge alone: their dent is still a hint.
  {
    item: 'grown',
    ask: 'How much has it grown?',
    detail: 'Since it left the fridge.',
    slab: { value: 'grown', label: 'Clearly grown' },
    tiles: [
      { value: 'little', label: 'A little' },
      { value: 'none', label: 'Not at all' },
      notSure,
    ],
  },
]);

/** A crumb's heat: the low end of a finished crumb, a sign and never alone (trade usage, seen). */
export const crustSigns: readonly Question[] = inTongue('signs', 'crustSigns', [
  {
    item: 'colour',
    ask: 'What colour is the crust?',
    detail: 'Aim for golden, not black.',
    slab: { value: 'golden', label: 'Golden' },
    tiles: [{ value: 'pale', label: 'Pale' }, { value: 'dark', label: 'Dark' }, notSure],
  },
  {
    item: 'base',
    ask: 'How does the base sound?',
    detail: 'Dry mitts. Lift the loaf and knock.',
    slab: { value: 'hollow', label: 'Hollow' },
    tiles: [{ value: 'dull', label: 'Dull' }, { value: 'dark', label: 'Dark' }, notSure],
  },
  {
    item: 'core',
    ask: 'What does the probe show inside?',
    detail: 'Not in a pocket of filling.',
    slab: { value: 'ready', label: '{crumbHeat} or more' },
    tiles: [
      { value: 'low', label: 'Under {crumbHeat}' },
      { value: 'notSure', label: 'No probe' },
    ],
  },
]);

/** Of these, what is said by itself. */
export const signsLines = inTongue('signs', 'signsLines', {
  tinBase,
});
