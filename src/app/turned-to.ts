import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import { bakeOf, focusOn } from '../screens/focus.ts';
import type { Pressed } from './keeper.ts';

/** The act on a bake's bench, and when it was entered; null where there is none. */
const actOn = (kitchen: Kitchen, bake: string): (Say & { readonly since: number }) | null => {
  const focus = focusOn(kitchen, bake);
  if (focus === null) return null;
  const stage = stageOf(focus.machine);
  return { who: focus.who, stage, since: focus.machine.context.entered[stage] ?? 0 };
};

const isSame = (a: ReturnType<typeof actOn>, b: ReturnType<typeof actOn>): boolean =>
  a?.who === b?.who && a?.stage === b?.stage && a?.since === b?.since;

/**
 * The act that a press turned its own bench to, by whichever machine and however long ago it was entered:
 * once the oven is off, the cooling that began behind it. Null where that bench has none any more; left
 * out where it shows the act it showed, or `kitchen`, what is by now, has gone on from there.
 */
export function turnedTo(
  { who, before, after }: Pressed,
  kitchen: Kitchen,
): Say | null | undefined {
  const bake = bakeOf(before, who);
  if (bake === null) return undefined;
  const act = actOn(after, bake);
  if (isSame(actOn(before, bake), act) || !isSame(actOn(kitchen, bake), act)) return undefined;
  return act && { who: act.who, stage: act.stage };
}
