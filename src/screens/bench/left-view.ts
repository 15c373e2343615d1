import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { BakeSnapshot, Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { bakedLoaves } from '../../../machines/kitchen/lanes.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { isLane } from '../../core/records/lane.ts';
import { leftForDays } from '../../core/readiness/left-for-days.ts';
import { clockAsk, left } from '../../core/speech/words/left.ts';
import type { Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { Asked } from './view.ts';

/** A bake whose loaves wait for the oven, none of them in it or out: as at its last look. */
const lastLook = (kitchen: Kitchen, { context }: BakeSnapshot): string | null => {
  const gone = bakedLoaves(kitchen);
  const baked = context.loaves.some((loaf) => gone.includes(loaf));
  if (baked) return null;
  return context.recipe.process.retard > 0 ? 'proof.look' : 'proof.poke';
};

/** What was left for days is not judged any more: the one press ends its bake. Null where nothing was. */
export function leftView(
  kitchen: Kitchen,
  { who, machine, bake }: Focus,
  stage: string,
  now: Instant,
): Asked | null {
  const queued = stageOf(bake) === 'oven.queued';
  if ((who === 'oven' || isLane(who)) && !queued) return null;
  const at = queued ? lastLook(kitchen, bake) : stage;
  const wait = queued ? null : deadlineOf(machine);
  const what = at === null ? null : leftForDays(at, bake.context.entered, wait, now);
  if (what === null) return null;
  const { headline, detail, spoken, slab, then } = left[what];
  const ended = { kind: 'press', who: bake.context.id, act: 'ended' } as const;
  return {
    headline,
    detail,
    spoken,
    slab: { label: slab, then, deed: ended },
    tiles: [],
    lines: [],
    hazard: 'none',
    // Nothing is heated or loaded any more: the step's own caution would only confuse.
    care: clockAsk.care,
    third: 'clock',
  };
}
