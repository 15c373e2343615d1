import type { Minutes } from '../units.ts';
import type { BulkTouch } from './formula.ts';
import { FOLD_LIMITS, LAMINATE_LIMITS, type Limits } from './process-limits.ts';
import { FOLD_GAP, SHEET_AT } from './process-usual.ts';
import { touchOf } from './touch-of.ts';

/** More than a reader of formulas takes. */
export const MOST_TOUCHES = 12;

type Touches = readonly BulkTouch[];

/** The dough is rolled out to a sheet at some time, and takes its filling in. */
export const hasSheet = (touches: Touches): boolean =>
  touches.some(({ kind }) => kind === 'laminate');

/** Minutes from the mix to each touch. */
const sinceMix = (touches: Touches): readonly Minutes[] =>
  touches.map((_, i) => touches.slice(0, i + 1).reduce((sum, { after: gap }) => sum + gap, 0));

/** One more fold, as long after the last touch as the last fold; the usual gap where there is none. */
export const withFold = (touches: Touches): Touches => [
  ...touches,
  touchOf('fold', touches.findLast(({ kind }) => kind === 'fold')?.after ?? FOLD_GAP),
];

/**
 * Without one touch: the next one takes up its wait, so that it stays as long after the mix as it was.
 *
 * @example
 * withoutTouch([{ kind: 'fold', after: 30 }, { kind: 'laminate', after: 30 }], 0) // → [{ kind: 'laminate', after: 60 }]
 */
export const withoutTouch = (touches: Touches, at: number): Touches =>
  touches.flatMap((touch, i) => {
    if (i === at) return [];
    if (i !== at + 1) return [touch];
    return [touchOf(touch.kind, touch.after + touches[at]!.after)];
  });

/** One fold fewer, the last; a sheet stays. As it was where there is no fold. */
export const withoutFold = (touches: Touches): Touches => {
  const at = touches.findLastIndex(({ kind }) => kind === 'fold');
  return at < 0 ? touches : withoutTouch(touches, at);
};

/**
 * With a sheet: the touch that lies nearest to its usual hour becomes one; where none lies within its
 * limits it is one touch more, at that hour. As it was where there is a sheet.
 *
 * @example
 * withSheet([{ kind: 'fold', after: 30 }, { kind: 'fold', after: 30 }]) // → [{ kind: 'fold', after: 30 }, { kind: 'laminate', after: 30 }]
 * withSheet([]) // → [{ kind: 'laminate', after: 60 }]
 */
export function withSheet(touches: Touches): Touches {
  if (hasSheet(touches)) return touches;
  const times = sinceMix(touches);
  const off = (i: number): number => Math.abs(times[i]! - SHEET_AT);
  const [nearest] = times
    .flatMap((at, i) => (at < LAMINATE_LIMITS.least || at > LAMINATE_LIMITS.most ? [] : [i]))
    .sort((a, b) => off(a) - off(b));
  if (nearest !== undefined) {
    return touches.map((touch, i) => (i === nearest ? { ...touch, kind: 'laminate' } : touch));
  }
  const later = times.findIndex((at) => at > SHEET_AT);
  const at = later < 0 ? touches.length : later;
  const gap = SHEET_AT - (times[at - 1] ?? 0);
  const next = touches[at];
  return [
    ...touches.slice(0, at),
    touchOf('laminate', gap),
    ...(next ? [touchOf(next.kind, next.after - gap)] : []),
    ...touches.slice(at + 1),
  ];
}

/** Without a sheet: each becomes a fold, at its own hour. */
export const withoutSheet = (touches: Touches): Touches =>
  touches.map((touch) => ({ ...touch, kind: 'fold' }));

/** One touch at other minutes since the one before it. */
export const withGap = (touches: Touches, at: number, gap: Minutes): Touches =>
  touches.map((touch, i) => (i === at ? touchOf(touch.kind, gap) : touch));

/**
 * Minutes within which a touch usually comes after the one before it: a sheet's limits count from the
 * mix, so that what was waited already goes off them.
 *
 * @example
 * gapLimits([{ kind: 'fold', after: 30 }, { kind: 'laminate', after: 30 }], 1) // → { least: 0, most: 60 }
 */
export function gapLimits(touches: Touches, at: number): Limits {
  if (touches[at]?.kind !== 'laminate') return FOLD_LIMITS;
  const before = sinceMix(touches)[at - 1] ?? 0;
  const { least, most } = LAMINATE_LIMITS;
  return { least: Math.max(0, least - before), most: Math.max(0, most - before) };
}
