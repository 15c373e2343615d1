import type { WaitInput } from '../../src/core/day/waits.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';

/**
 * When the loaves of a bake went into the fridge: at the press that says so, or as the bake was joined
 * there. Not known after a jump: then it is left out.
 */
export function loafMoves(
  { standing, starts }: Kitchen,
  { context }: BakeSnapshot,
): Pick<WaitInput, 'chilled'> {
  const pressed = standing.findLast(
    (fact) => fact.kind === 'press' && fact.who === context.id && fact.act === 'inFridge',
  );
  const start = starts[context.start];
  const joined = start?.from === 'proof.retard' ? start.at : undefined;
  const chilled = pressed?.at ?? joined;
  return chilled === undefined ? {} : { chilled };
}
