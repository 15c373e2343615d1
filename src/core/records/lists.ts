import type { Vessel } from '../formula/formula.ts';
import type { ListName, TickedList } from './stage.ts';

/**
 * The items of each checklist. Part of the machines' version: a bake's list is complete when every
 * item here is answered. What is ticked (ticked.ts) takes its items from the recipe.
 */
export const LISTS: Readonly<Record<Exclude<ListName, TickedList>, readonly string[]>> = {
  beforeStart: ['starter', 'flour', 'filling', 'pot', 'scale', 'fridge', 'hands'],
  levainSigns: ['rise', 'top', 'bubbles', 'smell', 'colour'],
  bulkSigns: ['rise', 'edge', 'bubbles', 'wobble', 'top'],
  loafSigns: ['grown', 'rim', 'dent', 'wobble', 'skin'],
  pokeSigns: ['dent', 'grown'],
  warmSigns: ['dent', 'grown'],
  beforeOven: ['mitts', 'floor', 'child', 'landing', 'parchment', 'knob', 'blade'],
  crustSigns: ['colour', 'base', 'core'],
};

/** No shorter list is called a checklist, and none is longer (docs/decisions/checklists.md). */
export const ITEMS = { least: 5, most: 9 } as const;

/** A stone has no lid with a knob; a greased tin has no parchment either. */
const NOT_ASKED: Readonly<Record<Vessel, readonly string[]>> = {
  pot: [],
  stone: ['knob'],
  tin: ['knob', 'parchment'],
};

/** What is asked of the baker before a load of this kind goes in. */
export const beforeOvenItems = (vessel: Vessel): readonly string[] =>
  LISTS.beforeOven.filter((item) => !NOT_ASKED[vessel].includes(item));

/**
 * Answers that leave their item open: the state is recorded, but the list is not complete until
 * it is mended. Nothing hot is moved with wet mitts, and no dough goes into a pot that may crack.
 */
const OPEN: Readonly<Partial<Record<ListName, Readonly<Record<string, readonly string[]>>>>> = {
  beforeStart: {
    flour: ['short'],
    pot: ['clayOrGlass'],
    scale: ['notZero'],
    hands: ['notYet'],
  },
  beforeOven: {
    child: ['close'],
    floor: ['cluttered', 'wet'],
    mitts: ['wet', 'missing'],
    landing: ['notYet'],
    knob: ['plastic'],
    blade: ['notYet'],
  },
};

/** Whether an answer closes its item. */
export const closes = (list: ListName, item: string, value: string | undefined): boolean =>
  value !== undefined && !(OPEN[list]?.[item]?.includes(value) ?? false);
