import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** What is kept of bakes beside the log, opened when a page of it is; once, unless that failed. */
export function laterLog(
  world: Pick<
    World,
    'keepsakes' | 'otherLogs' | 'pictures' | 'spokenNotes' | 'holds' | 'clock' | 'ids'
  >,
  tell: House['tell'],
): House['log'] {
  let coming: ReturnType<House['log']> | null = null;
  return () =>
    (coming ??= Promise.all([import('./open-house-log.ts'), world.keepsakes(), world.otherLogs()])
      .then(([its, keepsakes, others]) => its.openHouseLog(world, keepsakes, others, tell))
      .catch((error: unknown) => {
        coming = null;
        throw error;
      }));
}
