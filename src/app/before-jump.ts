import type { Kitchen, StartFact } from '../../machines/kitchen/kitchen.ts';
import type { Opened } from './open-log.ts';

/** The kitchen as the log's last row numbers it, ready for a jump to be written after it. */
export const beforeJump = ({ kitchen, records }: Opened): Kitchen => ({
  ...kitchen,
  seq: records.at(-1)?.seq ?? 0,
  starts: Object.fromEntries(
    records.flatMap(({ fact }): [string, StartFact][] =>
      fact.kind === 'start' ? [[fact.id, fact]] : [],
    ),
  ),
});
