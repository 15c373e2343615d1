import type { Ages } from './ages.ts';
import { isGated, type Guard } from './guard.ts';

/** Who does a step with a child there. A grown-up is beside it either way. */
export interface MayDo {
  readonly acts: 'child' | 'grownUp';
  /** Whether the slab is the child's to press. */
  readonly presses: boolean;
}

/** Held by children under five too, who stay off raw flour and dough. */
const YOUNGEST: Ages = '4-6';

const GROWN_UP: MayDo = { acts: 'grownUp', presses: false };
const ONLY_PRESSES: MayDo = { acts: 'grownUp', presses: true };
const CHILD: MayDo = { acts: 'child', presses: true };

/**
 * What a child may do at a step with this to guard it from. Hot iron, blades and the oven are nobody's
 * under thirteen here, nor is the press that says they are done; docs/small-hands.md has who says so.
 *
 * @example mayDo('raw', '4-6') // { acts: 'grownUp', presses: true }
 */
export function mayDo(guard: Guard, ages: Ages): MayDo {
  if (isGated(guard)) return GROWN_UP;
  if (guard === 'heavy') return ONLY_PRESSES;
  return guard !== 'none' && ages === YOUNGEST ? ONLY_PRESSES : CHILD;
}
