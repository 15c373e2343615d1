import { goesIn } from '../../core/formula/goes-in.ts';
import { EQUIPMENT, type Equipment } from '../../core/kitchen/equipment.ts';
import { recipeBowls, sharesOf, type Bowl } from '../../core/kitchen/split-bowls.ts';
import { bowlWeigh } from '../../core/speech/en/bowls.ts';
import { isRough } from '../../core/formula/round-for-scale.ts';
import type { WeighLine, WeighList } from '../../core/formula/recipe.ts';
import { weighRough, weighThen, weighWords } from '../../core/speech/en/weigh.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { sayShares, showShares } from '../../core/speech/in-bowls.ts';
import type { StageWords } from '../../core/speech/words.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { Asked, Line } from './view.ts';

const LISTS: Readonly<Record<string, WeighList>> = {
  'levain.feed': 'feed',
  'mix.weigh': 'first',
  'mix.salt': 'second',
};

/** A line's weight and name, bowl by bowl where the dough is in several. */
const lineLabel = (
  words: StageWords,
  { item, grams, name }: WeighLine,
  bowls: readonly Bowl[],
  units: Units,
): string =>
  bowls.length < 2
    ? fill(words.headline, shown({ grams, name }, units))
    : fill(words.headline, { grams: showShares(sharesOf(bowls, item), units), name });

/** Bowls that the lines of a list go into; the feed's are all for one jar. */
const bowlsOf = ({ bake }: Focus, list: WeighList, equipment: Equipment): readonly Bowl[] =>
  list === 'feed' ? [] : recipeBowls(bake.context.recipe, equipment);

/** Fillings are shown where they are scattered; they were weighed into a dish before. */
const fillingLines = (focus: Focus, units: Units, equipment: Equipment): Line[] => {
  const bowls = bowlsOf(focus, 'filling', equipment).map((bowl) => ({
    ...bowl,
    lines: goesIn(bowl.lines),
  }));
  return goesIn(focus.bake.context.recipe.lines.filling).map((line) => ({
    label: lineLabel(weighWords.filling, line, bowls, units),
    state: 'next',
  }));
};

/** What a line is weighed into, and how it is said: one bowl, or each of several. */
const into = (
  list: WeighList,
  { item, grams, name, division }: WeighLine,
  bowls: readonly Bowl[],
  units: Units,
): { readonly detail: string; readonly spoken: string; readonly rough: boolean } => {
  const words = weighWords[list];
  if (bowls.length < 2)
    return {
      detail: words.detail,
      spoken: fill(words.spoken, said({ grams, name }, units)),
      rough: isRough({ grams, division }),
    };
  const shares = sharesOf(bowls, item);
  return {
    detail: fill(list === 'second' ? bowlWeigh.second : bowlWeigh.first, { bowls: bowls.length }),
    spoken: sayShares(shares, name, units),
    rough: isRough({ grams: Math.min(...shares), division }),
  };
};

/** A weigh card: the present line is the headline, one press ticks it. Null where nothing is weighed. */
export function weighView(
  focus: Focus,
  stage: string,
  units: Units,
  equipment: Equipment = EQUIPMENT,
): Asked | null {
  const list = LISTS[stage];
  if (list === undefined) return null;
  const lines = focus.bake.context.recipe.lines[list];
  const { answers } = focus.machine.context;
  const at = lines.findIndex((line) => !(line.item in answers));
  const present = lines[at];
  if (present === undefined) return null;
  const words = weighWords[list];
  const bowls = bowlsOf(focus, list, equipment);
  const { detail, spoken, rough } = into(list, present, bowls, units);
  const next = lines.slice(at + 1).find((line) => !(line.item in answers));
  return {
    headline: lineLabel(words, present, bowls, units),
    detail: rough ? weighRough : detail,
    spoken: [spoken, rough ? weighRough : ''].filter(Boolean).join(' '),
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
      label: lineLabel(words, line, bowls, units),
      state: line.item in answers ? 'done' : i === at ? 'now' : 'next',
    })),
  };
}

/** Lines beside an act that uses what was weighed before. */
export const besideLines = (
  focus: Focus,
  stage: string,
  units: Units,
  equipment: Equipment,
): Line[] => (stage === 'bulk.scatter' ? fillingLines(focus, units, equipment) : []);
