import { goesIn } from '../../core/formula/goes-in.ts';
import { isRough } from '../../core/formula/round-for-scale.ts';
import type { WeighLine, WeighList } from '../../core/formula/recipe.ts';
import { weighRough, weighThen, weighWords } from '../../core/speech/en/weigh.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import type { StageWords } from '../../core/speech/words.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { Asked, Line } from './view.ts';

const LISTS: Readonly<Record<string, WeighList>> = {
  'levain.feed': 'feed',
  'mix.weigh': 'first',
  'mix.salt': 'second',
};

const lineLabel = (words: StageWords, { grams, name }: WeighLine, units: Units): string =>
  fill(words.headline, shown({ grams, name }, units));

/** Fillings are shown where they are scattered; they were weighed into a dish before. */
const fillingLines = ({ bake }: Focus, units: Units): Line[] =>
  goesIn(bake.context.recipe.lines.filling).map((line) => ({
    label: lineLabel(weighWords.filling, line, units),
    state: 'next',
  }));

/** A weigh card: the present line is the headline, one press ticks it. Null where nothing is weighed. */
export function weighView(focus: Focus, stage: string, units: Units): Asked | null {
  const list = LISTS[stage];
  if (list === undefined) return null;
  const lines = focus.bake.context.recipe.lines[list];
  const { answers } = focus.machine.context;
  const at = lines.findIndex((line) => !(line.item in answers));
  const present = lines[at];
  if (present === undefined) return null;
  const words = weighWords[list];
  const next = lines.slice(at + 1).find((line) => !(line.item in answers));
  return {
    headline: lineLabel(words, present, units),
    detail: isRough(present) ? weighRough : words.detail,
    spoken: [
      fill(words.spoken, said({ grams: present.grams, name: present.name }, units)),
      isRough(present) ? weighRough : '',
    ]
      .filter(Boolean)
      .join(' '),
    slab: {
      label: words.slab,
      then: next ? fill(weighThen.next, { name: next.name }) : weighThen.last,
      deed: {
        kind: 'press',
        who: focus.who,
        act: 'answer',
        item: present.item,
        value: String(present.grams),
      },
    },
    tiles: [],
    progress: { done: Object.keys(answers).length, of: lines.length },
    lines: lines.map((line, i) => ({
      label: lineLabel(words, line, units),
      state: line.item in answers ? 'done' : i === at ? 'now' : 'next',
    })),
  };
}

/** Lines beside an act that uses what was weighed before. */
export const besideLines = (focus: Focus, stage: string, units: Units): Line[] =>
  stage === 'bulk.scatter' ? fillingLines(focus, units) : [];
