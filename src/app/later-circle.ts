import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** The circle, opened when a page of it is; once, unless that failed. */
export function laterCircle(
  world: Pick<World, 'circle' | 'holds' | 'clock' | 'ids'>,
  tell: House['tell'],
): House['circle'] {
  let coming: ReturnType<House['circle']> | null = null;
  return () =>
    (coming ??= Promise.all([import('./open-circle.ts'), world.circle()])
      .then(([its, rows]) => its.openCircle(rows, world, tell))
      .catch((error: unknown) => {
        coming = null;
        throw error;
      }));
}
