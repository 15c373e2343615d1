import type { CircleRows } from '../../../machines/ports.ts';
import { makePassingRows } from '../row-store.ts';
import { makeCircleStore } from './circle-store.ts';

/** @param earnest false in a rehearsal: it has an empty circle of its own, and nothing of it is written */
export const openCircleRows = (earnest: boolean): CircleRows =>
  earnest ? makeCircleStore() : makePassingRows();
