import type { EarPhrase } from './phrases.ts';

/**
 * What was made of a saying. `unclear`: it may have been one of them, and which is not sure. `other`: it was
 * none of them. `long`: it was talk. `loud`: the room is too loud to tell.
 */
export type Heard =
  | { readonly phrase: EarPhrase; readonly person: string }
  | { readonly phrase: null; readonly why: 'unclear' | 'other' | 'long' | 'loud' };
