import { minutesOf, SLOT, slotDown, slotUp } from './grid.ts';
import type { Change, PlanInput, Span } from './types.ts';
import { least, withWindows, type WhatIf } from './what-if.ts';

/** A window on whole slots, so that a trim of five minutes is one. */
const onSlots = (span: Span): Span => ({
  ...span,
  from: slotDown(span.from) * SLOT,
  to: slotUp(span.to) * SLOT,
});

/**
 * Where no single change does: windows that have to give together, each at one end only, none of which
 * could be left as it is. Long windows, nights mostly, are kept where others will do. Empty where even
 * all that can bend given up would not help.
 */
export function together(input: PlanInput, ask: WhatIf): Change[] {
  const { blocked } = input;
  const rigid = [...blocked.keys()].filter((i) => blocked[i]!.canBend === false);
  const bendable = [...blocked.keys()]
    .filter((i) => blocked[i]!.canBend !== false)
    .sort((a, b) => blocked[b]!.to - blocked[b]!.from - (blocked[a]!.to - blocked[a]!.from));
  if (!ask.fits(withWindows(input, rigid))) return [];
  const kept = [...rigid];
  const given: number[] = [];
  for (const i of bendable) {
    if (ask.fits(withWindows(input, [...kept, i]))) kept.push(i);
    else given.push(i);
  }
  const changes: Change[] = [];
  let settled = withWindows(input, kept);
  for (const i of given) {
    const span = blocked[i]!;
    const whole = onSlots(span);
    const slots = (whole.to - whole.from) / SLOT;
    const withSpan = (one: Span): PlanInput => ({ ...settled, blocked: [...settled.blocked, one] });
    const atEnd = (n: number): Span => ({ ...whole, to: whole.to - n * SLOT });
    const atStart = (n: number): Span => ({ ...whole, from: whole.from + n * SLOT });
    const end = least(slots, (n) => ask.fits(withSpan(atEnd(n)))) ?? slots;
    const start = least(slots, (n) => ask.fits(withSpan(atStart(n)))) ?? slots;
    const isEnd = end <= start;
    settled = withSpan(isEnd ? atEnd(end) : atStart(start));
    changes.push({
      change: 'blocked',
      name: span.name ?? '',
      from: span.from,
      to: span.to,
      endEarlierBy: isEnd ? minutesOf(end) : null,
      startLaterBy: isEnd ? null : minutesOf(start),
    });
  }
  return changes;
}
