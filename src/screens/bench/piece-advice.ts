import { dividedPiece } from '../../core/formula/filled-at-shape.ts';
import { divideAdvice } from '../../core/speech/words/kitchen.ts';
import { fill } from '../../core/speech/fill.ts';
import { shown } from '../../core/speech/facts.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** A piece this near its weight is left alone: 1 %, at least 5 g. Judgement. */
const near = (piece: number): number => Math.max(5, piece * 0.01);

/** What to move, once the first piece has been weighed here; else null. */
export function pieceAdvice({ bake }: Focus, stage: string, units: Units): string | null {
  const { readings, entered, recipe } = bake.context;
  // A bake begun by an older program has its piece under the older name.
  const weighed = readings['weight.piece'] ?? readings['firstPiece'];
  if (stage !== 'shape.divide' || weighed === undefined) return null;
  if (!('grams' in weighed.reading) || weighed.at < (entered[stage] ?? 0)) return null;
  const { grams } = weighed.reading;
  const piece = dividedPiece(recipe);
  const off = Math.round(grams - piece);
  const say = (template: string, g: number) => fill(template, shown({ grams: g }, units));
  if (Math.abs(off) <= near(piece)) return say(divideAdvice.right.text, grams);
  return off > 0 ? say(divideAdvice.heavy.text, off) : say(divideAdvice.light.text, -off);
}
