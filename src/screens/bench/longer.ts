import { countdown, runningLines } from '../../core/speech/words/running.ts';
import { said } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE } from '../../core/units.ts';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { benchView, type BenchView } from './view.ts';

/** The answer to "how much longer?", as it is said. */
export const longerWords = (
  house: Pick<House, 'now' | 'hour'>,
  { deadline, waits }: Pick<BenchView, 'deadline' | 'waits'>,
): string => {
  if (deadline === null || waits === null) return runningLines.nothingRuns;
  const minutes = Math.max(0, Math.ceil((deadline - house.now()) / MINUTE));
  return fill(countdown[waits].ask, said({ minutes, time: house.hour(deadline) }));
};

/** The act of a bake, seen from outside its bench: its questions are not worded. */
export function actOf(house: House, bake: string | null): BenchView | null {
  const focus = bake === null ? null : focusOn(house.kitchen(), bake);
  if (focus === null) return null;
  const hour = (at: number): string => house.hour(at);
  return benchView(house.kitchen(), focus, hour, null, house.ways(), house.equipment());
}

/** The same, asked from outside the bench of that bake. */
export function longerOf(house: House, bake: string | null): string {
  const act = actOf(house, bake);
  return act === null ? runningLines.nothingRuns : longerWords(house, act);
}
