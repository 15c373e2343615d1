import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** The Book's pictures, opened when a page of it is; once, unless that failed. */
export function laterPictures(world: Pick<World, 'pictures' | 'holds'>): House['pictures'] {
  let coming: ReturnType<House['pictures']> | null = null;
  return () =>
    (coming ??= Promise.all([import('./book-pictures.ts'), world.pictures()])
      .then(([its, pictures]) => its.openBookPictures(pictures, world.holds))
      .catch((error: unknown) => {
        coming = null;
        throw error;
      }));
}
