import type { Recipe, WeighLine, WeighList } from '../../../core/formula/recipe.ts';
import { EQUIPMENT, type Equipment } from '../../../core/kitchen/equipment.ts';
import { recipeBowls, sharesOf, type Bowl } from '../../../core/kitchen/split-bowls.ts';
import { benchSheet as words } from '../../../core/speech/words/share.ts';
import { careLines } from '../../../core/speech/words/care.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showShares, tellClocks, tellShares } from '../../../core/speech/in-bowls.ts';
import { tellAllergens } from '../../../core/speech/tell-allergens.ts';
import { showHeat } from '../../../core/speech/heats.ts';
import { tellLine } from '../../../core/speech/tell-line.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { Minutes, Units } from '../../../core/units.ts';
import { inPages, linesIn, type BenchLine, type BenchList, type BenchPage } from './sheet-pages.ts';

export interface BenchView {
  readonly title: string;
  readonly of: string;
  /** How the dough is shared, and how far apart its bowls are; null: one bowl. */
  readonly bowls: string | null;
  readonly lists: readonly BenchList[];
  readonly steps: readonly BenchLine[];
  readonly notes: readonly string[];
  /** What stands on which page: one, unless it is so long that nobody could read it on one. */
  readonly pages: readonly BenchPage[];
  /** How close the lines stand, so that all of it is one page. */
  readonly close: Way;
}

/** Lines that a page holds beside its head and foot, in each of the ways: measured on A4 and Letter. */
const HOLDS = { roomy: 17, close: 26, closest: 36 } as const;
/** Letters of each way, times those of the close one. */
const SIZE = { roomy: 1.35, close: 1, closest: 0.83 } as const;
/** Letters of a bread's name in one line over the sheet. */
const NAME = 30;
/** Letters of a note in one line under it. */
const NOTE = 90;
const WAYS = ['roomy', 'close', 'closest'] as const;
type Way = (typeof WAYS)[number];

const ORDER: readonly WeighList[] = ['feed', 'first', 'second', 'filling'];

/** Steps in the order of the hands; a step of no time is left out. */
function stepsOf({ process }: Recipe, units: Units): BenchLine[] {
  const { vessel, retard } = process;
  const step = (what: string, minutes: Minutes | null): BenchLine[] =>
    minutes === 0 ? [] : [{ what, much: minutes === null ? '' : showLength(minutes) }];
  return [
    ...step(words.rest, process.rest),
    ...process.touches.flatMap(({ kind, after }) => step(words[kind], after)),
    ...step(fill(words.bulk, { rise: process.rise }), null),
    ...(process.shaping === 'scoop'
      ? step(words.spoon, null)
      : [
          ...step(words.divide, null),
          ...step(words.bench, process.benchRest),
          ...step(words.shape, null),
        ]),
    ...(retard > 0
      ? [
          ...step(words.counter, process.counter),
          ...step(fill(words.retard, { celsius: showHeat(process.fridge, units) }), retard),
        ]
      : step(words.warm, process.warm)),
    ...step(words.preheat, process.preheat),
    ...step(words.lidded[vessel], process.lidded),
    ...step(words.open[vessel], process.open),
    ...step(words.cool, process.cool),
  ];
}

/** Lines that notes of what spoils take of a page, the first two left out, whose room is counted. */
const extra = (spoils: number): number => Math.max(0, spoils - 2);

/** What a line weighs: bowl by bowl where the dough is in several; the feed is for one jar. */
const weightOf = (
  list: WeighList,
  { item, grams }: WeighLine,
  bowls: readonly Bowl[],
  units: Units,
): string =>
  list === 'feed' || bowls.length < 2
    ? showWeight(grams, units)
    : showShares(sharesOf(bowls, item), units);

/** A bake as one sheet of paper: what is weighed, in the order of use, the steps, and the cautions. */
export function benchView(
  recipe: Recipe,
  units: Units,
  made: string,
  equipment: Equipment = EQUIPMENT,
): BenchView {
  const { formula, loaves, piece, dough, keepBack, lines } = recipe;
  const title = showBread(formula.name);
  const bowls = recipeBowls(recipe, equipment);
  const lists = ORDER.flatMap((list) =>
    lines[list].length === 0
      ? []
      : [
          {
            title: words.lists[list],
            lines: lines[list].map((line) => ({
              what: tellLine(line),
              much: weightOf(list, line, bowls, units),
            })),
          },
        ],
  );
  const steps = stepsOf(recipe, units);
  const spoils = formula.fillings.filter(({ keeps }) => keeps === 'perishable');
  const allergens = tellAllergens(formula).join(' ');
  const notes = [
    fill(words.keepBack, { grams: showWeight(keepBack, units) }),
    words.times,
    ...spoils.map(({ name }) => fill(words.spoils, { filling: showPart(name) })),
    allergens,
    careLines.RAW_FLOUR,
    careLines.RAW_DOUGH,
    `${careLines.MITTS} ${careLines.RING}`,
    fill(words.made, { time: made }),
  ];
  const todo = { title: words.steps, lines: steps };
  const shared = [tellShares(bowls, units), tellClocks(bowls.length)?.shown].filter(Boolean);
  const head = (shared.length > 0 ? 1 : 0) + 2 * Math.floor(title.length / NAME);
  const rowsIn = (way: Way): number =>
    Math.max(linesIn(lists, SIZE[way]), steps.length + 1) +
    extra(spoils.length) +
    Math.floor(allergens.length / NOTE) +
    head;
  /** The roomiest way in which all of it is one page; null: none is. */
  const way = WAYS.find((one) => rowsIn(one) <= HOLDS[one]) ?? null;
  return {
    title,
    of: fill(words.of, {
      loaves: loaves === 1 ? words.loaf : fill(words.many, { count: loaves }),
      piece: showWeight(piece, units),
      dough: showWeight(dough, units),
    }),
    bowls: shared.join(' ') || null,
    lists,
    steps,
    notes,
    pages: way === null ? inPages(lists, todo, notes) : [{ columns: [lists, [todo]], notes }],
    close: way ?? 'close',
  };
}
