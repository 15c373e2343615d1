import type { ListName } from './stage.ts';

/**
 * The lists that are gone through item by item so that nothing is left out; their end is said. Weigh cards
 * and the short looks at a single loaf are none.
 */
export const CHECKLISTS = [
  'beforeStart',
  'levainSigns',
  'bulkSigns',
  'loafSigns',
  'beforeOven',
] as const satisfies readonly ListName[];

export const isChecklist = (list: ListName): boolean =>
  (CHECKLISTS as readonly ListName[]).includes(list);
