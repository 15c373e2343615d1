import type { KeepsakeRows } from '../../../machines/ports.ts';

/** @param _earnest false in a rehearsal: nothing of it is written */
export const openKeepsakeRows = (_earnest: boolean): KeepsakeRows => ({
  load: () => Promise.resolve(new Map()),
  loadKept: () => Promise.resolve(new Map()),
  write: () => Promise.resolve(),
});
