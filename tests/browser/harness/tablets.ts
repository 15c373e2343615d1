import { inject } from 'vitest';
import { VIEWPORTS, type ViewportName } from './open-app.ts';

const ALL = Object.keys(VIEWPORTS) as ViewportName[];
let turn = -1;

/**
 * The tablets to look at just now. All of them in `npm run faults`; in `npm test` one, in turn: a walk
 * that looks at each of its pages has seen every tablet by its third.
 */
export function tabletsNow(): readonly ViewportName[] {
  if (inject('everyTablet')) return ALL;
  turn += 1;
  return [ALL[turn % ALL.length]!];
}
