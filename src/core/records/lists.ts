import type { ListName } from './stage.ts';

/**
 * The items of each checklist. Part of the machines' version: a bake's list is complete when every
 * item here is answered. Weigh cards (`feed`, `first`, `second`) take their items from the recipe.
 */
export const LISTS: Readonly<
  Record<Exclude<ListName, 'feed' | 'first' | 'second'>, readonly string[]>
> = {
  beforeStart: ['starter', 'flour', 'filling', 'pot', 'scale', 'fridge', 'hands'],
  levainSigns: ['rise', 'top', 'bubbles', 'smell', 'colour'],
  bulkSigns: ['rise', 'edge', 'bubbles', 'wobble', 'top'],
  loafSigns: ['grown', 'rim', 'dent', 'wobble', 'skin'],
  pokeSigns: ['dent', 'grown'],
  beforeOven: ['mitts', 'floor', 'child', 'landing', 'parchment', 'knob', 'blade'],
  crustSigns: ['colour', 'base', 'core'],
};
