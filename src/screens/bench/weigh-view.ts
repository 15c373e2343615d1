import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import { goesIn } from '../../core/formula/goes-in.ts';
import type { Recipe, WeighLine } from '../../core/formula/recipe.ts';
import { isRough } from '../../core/formula/round-for-scale.ts';
import { EQUIPMENT, type Equipment } from '../../core/kitchen/equipment.ts';
import { recipeBowls, sharesOf, type Bowl } from '../../core/kitchen/split-bowls.ts';
import type { TickedList } from '../../core/records/stage.ts';
import { isTicked, tickedLines } from '../../core/records/ticked.ts';
import { bowlWeigh } from '../../core/speech/words/bowls.ts';
import { bulk } from '../../core/speech/words/bulk.ts';
import { weighThen, weighWords, weighLines } from '../../core/speech/words/weigh.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { sayShares, showShares } from '../../core/speech/in-bowls.ts';
import { toldLine } from '../../core/speech/tell-line.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { StageWords } from '../../core/speech/words.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { Asked, Line } from './view.ts';

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

/** Bowls that the lines of a list go into; the feed's are all for one jar, and shaped loaves are in none. */
const bowlsOf = ({ bake }: Focus, list: TickedList, equipment: Equipment): readonly Bowl[] => {
  const { recipe } = bake.context;
  if (list === 'feed' || (list === 'worked' && recipe.process.shaping === 'round')) return [];
  const bowls = recipeBowls(recipe, equipment);
  return list === 'filling' || list === 'worked'
    ? bowls.map((bowl) => ({ ...bowl, lines: goesIn(bowl.lines) }))
    : bowls;
};

/** Fillings of a bake that has them scattered in one press: they are shown. */
const fillingLines = (focus: Focus, units: Units, equipment: Equipment): Line[] =>
  goesIn(focus.bake.context.recipe.lines.filling).map((line) => ({
    label: lineLabel(
      weighWords.filling,
      toldLine(line),
      bowlsOf(focus, 'filling', equipment),
      units,
    ),
    state: 'next',
  }));

/** What spoils stays cold until it goes in: told at its own line. */
const detailOf = (recipe: Recipe, item: string, words: StageWords, units: Units): string => {
  // By the name that is kept: the line's own may be another tongue's.
  const kept = recipe.lines.filling.find((line) => line.item === item)?.name;
  const spoils = recipe.warnings.find(
    ({ key, values }) => key === 'perishableFilling' && values['filling'] === kept,
  );
  return spoils ? tellNotice(spoils, units) : words.detail;
};

/** What a line is weighed into, and how it is said: one bowl, or each of several. */
const into = (
  list: TickedList,
  line: WeighLine,
  recipe: Recipe,
  bowls: readonly Bowl[],
  units: Units,
): { readonly detail: string; readonly spoken: string; readonly rough: boolean } => {
  const { item, grams, name, division } = line;
  const words = weighWords[list];
  const detail = detailOf(recipe, item, words, units);
  if (bowls.length < 2)
    return {
      detail,
      spoken: fill(words.spoken, said({ grams, name }, units)),
      rough: isRough({ grams, division }),
    };
  const shares = sharesOf(bowls, item);
  const each = list === 'second' ? bowlWeigh.second : bowlWeigh.first;
  const weighed = list === 'first' || list === 'second';
  return {
    detail: weighed ? fill(each, { bowls: bowls.length }) : detail,
    spoken: sayShares(shares, name, units),
    rough: isRough({ grams: Math.min(...shares), division }),
  };
};

/** What follows the last line: the card is done, or hands go on with the dough. */
const lastThen = (list: TickedList): string =>
  list === 'filling' || list === 'worked' ? weighWords[list].then : weighThen.last;

/**
 * A weigh card, or what goes in: the present line is the headline, one press ticks it. Null where nothing
 * is ticked, or all of it is.
 */
export function weighView(
  focus: Focus,
  units: Units,
  equipment: Equipment = EQUIPMENT,
): Asked | null {
  const { list } = metaOf(focus.machine);
  if (list === undefined || !isTicked(list)) return null;
  const { recipe } = focus.bake.context;
  const lines = tickedLines(recipe, list).map(toldLine);
  const { answers } = focus.machine.context;
  const at = lines.findIndex((line) => !(line.item in answers));
  const present = lines[at];
  if (present === undefined) return null;
  const words = weighWords[list];
  const bowls = bowlsOf(focus, list, equipment);
  const { detail, spoken, rough } = into(list, present, recipe, bowls, units);
  const next = lines.slice(at + 1).find((line) => !(line.item in answers));
  // With the first filling it is said how all of it is scattered.
  const how = list === 'filling' && Object.keys(answers).length === 0;
  return {
    headline: lineLabel(words, present, bowls, units),
    detail: rough ? weighLines.weighRough : detail,
    spoken: [spoken, rough ? weighLines.weighRough : '', how ? bulk['bulk.scatter'].spoken : '']
      .filter(Boolean)
      .join(' '),
    slab: {
      label: words.slab,
      then: next ? fill(weighThen.next, { name: next.name }) : lastThen(list),
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
