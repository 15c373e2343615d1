import type { OtherLogs } from '../../../machines/ports.ts';
import { makeOtherLogsStore } from './other-logs-store.ts';

const NONE: OtherLogs = {
  load: () => Promise.resolve(new Map()),
  write: () => Promise.resolve(),
};

/** @param earnest false in a rehearsal: it has none, and none is written */
export const openOtherLogs = (earnest: boolean): OtherLogs =>
  earnest ? makeOtherLogsStore() : NONE;
