import { expect, inject } from 'vitest';
import { VIEWPORTS, type ViewportName } from './open-app.ts';

const ALL = Object.keys(VIEWPORTS) as ViewportName[];
/** How many pages were looked at in each test: the same page meets the same tablet in every run. */
const turns = new Map<string, number>();

/**
 * The tablets to look at just now. All of them in `npm run faults`; in `npm test` one, in turn: a walk
 * that looks at each of its pages has seen every tablet by its third.
 */
export function tabletsNow(): readonly ViewportName[] {
  if (inject('everyTablet')) return ALL;
  const { testPath, currentTestName } = expect.getState();
  const test = `${testPath} ${currentTestName}`;
  const turn = turns.get(test) ?? 0;
  turns.set(test, turn + 1);
  return [ALL[turn % ALL.length]!];
}
