import { inTongue } from '../tongue.ts';
import { WASH_AGAIN } from './care.ts';
import type { Question } from '../words.ts';

/** Answers are states, never assent: nothing here can be waved through. */
export const beforeStart: readonly Question[] = inTongue('before', 'beforeStart', [
  {
    item: 'starter',
    ask: 'Where is the starter?',
    slab: { value: 'fridge', label: 'In the fridge' },
    tiles: [
      { value: 'counter', label: 'On the counter' },
      { value: 'fedToday', label: 'Fed today' },
    ],
  },
  {
    item: 'flour',
    ask: 'Is there flour for all of it?',
    detail: 'Dusting flour too.',
    slab: { value: 'enough', label: 'Enough' },
    tiles: [{ value: 'short', label: 'Too little' }],
  },
  {
    item: 'filling',
    ask: 'How is the filling?',
    detail: 'Nuts toasted and cool, fruit drained and dry.',
    slab: { value: 'toastedDry', label: 'Toasted, dry' },
    tiles: [
      { value: 'toPrepare', label: 'Still to do' },
      { value: 'none', label: 'No filling' },
    ],
  },
  {
    item: 'pot',
    ask: 'What is the pot made of?',
    detail: 'Cold dough can crack hot clay, glass or enamel.',
    slab: { value: 'bareIron', label: 'Bare iron' },
    tiles: [
      { value: 'metalKnob', label: 'Enamel, metal knob' },
      { value: 'plasticKnob', label: 'Plastic knob' },
      { value: 'clayOrGlass', label: 'Clay or glass' },
      { value: 'noPot', label: 'No pot used' },
    ],
  },
  {
    item: 'scale',
    ask: 'What does the scale show, empty?',
    slab: { value: 'zeroed', label: 'It shows zero' },
    tiles: [
      { value: 'notZero', label: 'Not zero' },
      { value: 'noScale', label: 'No scale' },
    ],
  },
  {
    item: 'hands',
    ask: 'How are your hands?',
    detail: WASH_AGAIN,
    slab: { value: 'washed', label: 'Washed' },
    tiles: [{ value: 'notYet', label: 'Not yet' }],
  },
  {
    item: 'fridge',
    ask: 'Is there room in the fridge?',
    detail: 'One clear shelf, at {fridgeHeat} or colder.',
    slab: { value: 'cleared', label: 'Shelf is clear' },
    tiles: [
      { value: 'full', label: 'It is full' },
      { value: 'warm', label: 'Over {fridgeHeat}' },
    ],
  },
]);

/** Asked with clean hands free, before anything hot is moved. */
export const beforeOven: readonly Question[] = inTongue('before', 'beforeOven', [
  {
    item: 'child',
    ask: 'Where are the children?',
    detail: 'They stay 1 m back, with a task of their own.',
    slab: { value: 'away', label: 'Out of reach' },
    tiles: [
      { value: 'withGrownUp', label: 'With a grown-up' },
      { value: 'none', label: 'None here' },
      { value: 'close', label: 'Too close' },
    ],
  },
  {
    item: 'floor',
    ask: 'How is the floor by the oven?',
    slab: { value: 'clear', label: 'Clear and dry' },
    tiles: [
      { value: 'cluttered', label: 'Things on it' },
      { value: 'wet', label: 'Wet' },
    ],
  },
  {
    item: 'mitts',
    ask: 'How are the oven mitts?',
    detail: 'Heat goes straight through a wet mitt.',
    slab: { value: 'dry', label: 'Both dry' },
    tiles: [
      { value: 'wet', label: 'Wet' },
      { value: 'missing', label: 'Not here' },
    ],
  },
  {
    item: 'landing',
    ask: 'Where will the hot things go?',
    detail: 'Pot and lid, water tray or tins: two spots.',
    slab: { value: 'ready', label: 'Both spots free' },
    tiles: [{ value: 'notYet', label: 'Not yet' }],
  },
  {
    item: 'parchment',
    ask: 'What heat can the parchment take?',
    detail: 'Much of it takes only {parchmentHeat}.',
    slab: { value: 'rated', label: 'Rated for it' },
    tiles: [
      { value: 'noParchment', label: 'None used' },
      { value: 'unknown', label: 'I don’t know' },
    ],
  },
  {
    item: 'knob',
    ask: 'What is the lid knob made of?',
    detail: 'Plastic? Take it off before the oven.',
    slab: { value: 'metal', label: 'Metal' },
    tiles: [
      { value: 'plasticOff', label: 'Plastic, taken off' },
      { value: 'plastic', label: 'Plastic, still on' },
      { value: 'noLid', label: 'No lid' },
    ],
  },
  {
    item: 'blade',
    ask: 'Where is the blade?',
    detail: 'Covered, and out of a child’s reach.',
    slab: { value: 'ready', label: 'Covered, at hand' },
    tiles: [{ value: 'notYet', label: 'Not yet' }],
  },
]);
