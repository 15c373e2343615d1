import { inTongue } from '../tongue.ts';

/** What a tongue of long words does for eyes. English has room for its own. */
export const soft = inTongue('soft', 'soft', {
  /** The same words, with soft hyphens where a line may end inside one. */
  soften: (text: string): string => text,
});
