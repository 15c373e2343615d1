import { fillingWarnings } from '../../core/formula/filling-warnings.ts';
import { dividedPiece, fillingEach, fillsAtShape } from '../../core/formula/filled-at-shape.ts';
import { goesIn } from '../../core/formula/goes-in.ts';
import type { WeighLine } from '../../core/formula/recipe.ts';
import { filledWords, shape } from '../../core/speech/words/shape.ts';
import { weighWords } from '../../core/speech/words/weigh.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellLine } from '../../core/speech/tell-line.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { BenchView, Line } from './view.ts';

const lineOf =
  (units: Units) =>
  (line: WeighLine): Line => ({
    label: fill(
      weighWords.filling.headline,
      shown({ grams: line.grams, name: tellLine(line) }, units),
    ),
    state: 'next',
  });

/**
 * Where no sheet took the filling in: the pieces weigh less until then, and at the shaping stands how
 * much of each filling goes in, with what may not stand long told there.
 */
export function filledView(view: BenchView, { bake }: Focus, units: Units): BenchView {
  const { recipe, loaves } = bake.context;
  if (!fillsAtShape(recipe)) return view;
  const { lines, formula, process } = recipe;
  if (view.stage === 'shape.divide') {
    const words = shape['shape.divide'];
    const facts = { grams: dividedPiece(recipe), loaves: loaves.length };
    return {
      ...view,
      headline: fill(words.headline, shown(facts, units)),
      spoken: fill(words.spoken, said(facts, units)),
    };
  }
  if (view.stage !== 'shape.finalShape' && view.stage !== 'shape.scoop') return view;
  const spoils = fillingWarnings({ ...formula, process })
    .filter(({ key }) => key === 'perishableFilling')
    .map((notice) => tellNotice(notice, units));
  return {
    ...view,
    detail: fill(filledWords[view.stage], shown({ grams: recipe.piece }, units)),
    lines: (view.stage === 'shape.scoop' ? goesIn(lines.filling) : fillingEach(recipe)).map(
      lineOf(units),
    ),
    care: [...spoils, ...(view.care === null ? [] : [view.care])].join(' ') || null,
  };
}
