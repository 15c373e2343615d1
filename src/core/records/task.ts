/** What a wait may ask of free hands, by the name its mark and its fact carry. */
export const TASKS = [
  'soak', // seeds in water
  'takeOut', // cheese out of the fridge
  'toast', // nuts or seeds, and let them cool
  'drain', // drain and dry
  'cut', // cut in even pieces
  'coat', // dust with flour, so that it does not slide
  'bench', // wet the bench for the sheet
  'baskets', // dust the baskets
  'grease', // grease the tins
  'shelf', // clear a fridge shelf
  'parchment', // cut it
  'kettle', // boil water for the steam
  'fetch', // the next loaf out of the fridge
  'rack', // cooling rack out
  'tidyMix', // clear away at the start of a rest
  'tidyBulk',
  'tidyBench',
  'rise45', // say how far the dough has risen, at so much of its time, %
  'rise70',
  'rise85',
] as const;
export type Task = (typeof TASKS)[number];

/**
 * What a hot call says a minute ahead, as a wait's task is due. Nobody is asked for anything: it is said once, rings
 * not, is pressed by nobody, and is gone with its wait.
 */
export const HEADS_UP = 'hands';

/** Tasks that ask for a reading of the dough's rise. */
export const asksRise = (task: string | null): boolean => task?.startsWith('rise') ?? false;
