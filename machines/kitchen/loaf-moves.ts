import type { WaitInput } from '../../src/core/day/waits.ts';
import type { BakeAct } from '../../src/core/records/fact.ts';
import type { Instant } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';

/**
 * When the loaves of a bake went into the fridge, at the press that says so or as the bake was joined
 * there, and when they were taken out of it to stand. What is not known after a jump is left out.
 */
export function loafMoves(
  { standing, starts }: Kitchen,
  { context }: BakeSnapshot,
): Pick<WaitInput, 'chilled' | 'takenOut'> {
  const pressed = (act: BakeAct): Instant | undefined =>
    standing.findLast(
      (fact) => fact.kind === 'press' && fact.who === context.id && fact.act === act,
    )?.at;
  const start = starts[context.start];
  const joined = start?.from === 'proof.retard' ? start.at : undefined;
  const chilled = pressed('inFridge') ?? joined;
  const takenOut = pressed('standOut');
  return {
    ...(chilled === undefined ? {} : { chilled }),
    ...(takenOut === undefined ? {} : { takenOut }),
  };
}
