import { countdown, nothingRuns } from '../../core/speech/en/running.ts';
import { said } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE } from '../../core/units.ts';
import type { House } from '../house.ts';
import type { BenchView } from './view.ts';

/** The answer to "how much longer?", as it is said. */
export const longerWords = (
  house: House,
  { deadline, waits }: Pick<BenchView, 'deadline' | 'waits'>,
): string => {
  if (deadline === null || waits === null) return nothingRuns;
  const minutes = Math.max(0, Math.ceil((deadline - house.now()) / MINUTE));
  return fill(countdown[waits as keyof typeof countdown].ask, said({ minutes }));
};
