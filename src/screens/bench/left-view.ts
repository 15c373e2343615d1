import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { leftForDays } from '../../core/readiness/left-for-days.ts';
import { left } from '../../core/speech/en/left.ts';
import type { Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { Asked } from './view.ts';

/** What was left for days is not judged any more: the one press ends its bake. Null where nothing was. */
export function leftView({ who, machine }: Focus, stage: string, now: Instant): Asked | null {
  if (who === 'oven') return null;
  const what = leftForDays(stage, machine.context.entered, deadlineOf(machine), now);
  if (what === null) return null;
  const { headline, detail, spoken, slab, then } = left[what];
  const ended = { kind: 'press', who, act: 'ended' } as const;
  return {
    headline,
    detail,
    spoken,
    slab: { label: slab, then, deed: ended },
    tiles: [],
    lines: [],
  };
}
