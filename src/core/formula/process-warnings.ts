import type { Process } from './formula.ts';
import type { Notice } from './notice.ts';
import {
  FOLD_LIMITS,
  LAMINATE_LIMITS,
  limitsOf,
  type Limits,
  type ProcessPart,
} from './process-limits.ts';

/**
 * Warnings about a process: minutes outside the trade's table (`processOutside`: part, minutes,
 * least, most), a wanted rise outside 50–100 % (`riseOutside`), a fridge outside 3–5 °C
 * (`fridgeOutside`), a spooned dough without a tin to hold it (`scoopNeedsTin`). Only parts that the
 * process uses are judged. A fold's minutes count from the touch before it, a lamination's from the mix.
 * Source: process-limits.ts; the fridge at 5 °C or below is the food rule, 3 °C is practice.
 * Failure: none; an ordinary process gives an empty list.
 */
export function processWarnings(process: Process): readonly Notice[] {
  const warnings: Notice[] = [];
  const check = (part: string, minutes: number, { least, most }: Limits): void => {
    if (minutes >= least && minutes <= most) return;
    warnings.push({ key: 'processOutside', values: { part, minutes, least, most } });
  };
  for (const [part, limits] of Object.entries(limitsOf(process))) {
    check(part, process[part as ProcessPart], limits);
  }
  let sinceMix = 0;
  for (const touch of process.touches) {
    sinceMix += touch.after;
    if (touch.kind === 'fold') check('fold', touch.after, FOLD_LIMITS);
    else check('laminate', sinceMix, LAMINATE_LIMITS);
  }
  const { rise, fridge, retard, shaping, vessel } = process;
  if (rise < 50 || rise > 100) {
    warnings.push({ key: 'riseOutside', values: { rise, least: 50, most: 100 } });
  }
  if (retard > 0 && (fridge < 3 || fridge > 5)) {
    warnings.push({ key: 'fridgeOutside', values: { fridge, least: 3, most: 5 } });
  }
  if (shaping === 'scoop' && vessel !== 'tin') warnings.push({ key: 'scoopNeedsTin', values: {} });
  return warnings;
}
