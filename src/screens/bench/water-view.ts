import { mixInput } from '../../../machines/kitchen/mixes.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { feedWater, seedOf } from '../../core/day/feed-water.ts';
import { atMix, type MixInput } from '../../core/day/mix-known.ts';
import { firstWater, secondWater, type StageWater } from '../../core/day/mix-water.ts';
import type { WeighList } from '../../core/formula/recipe.ts';
import { water } from '../../core/speech/words/water.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { BenchView } from './view.ts';
import {
  guessWords,
  inTheAir,
  isKnown,
  learnedWords,
  onScreen,
  showSpan,
  type Writer,
} from './water-words.ts';

/** A weigh card whose water has a temperature: which line, and how it is reckoned. */
interface Card {
  readonly list: WeighList;
  readonly item: string;
  /** Its name in the catalogue of water. */
  readonly label: 'levain' | 'dough';
  readonly of: (input: MixInput) => StageWater | null;
}

const CARDS: Readonly<Record<string, Card>> = {
  'levain.feed': { list: 'feed', item: 'water', label: 'levain', of: feedWater },
  'mix.weigh': {
    list: 'first',
    item: 'water',
    label: 'dough',
    of: (input) => firstWater(input),
  },
  'mix.salt': {
    list: 'second',
    item: 'secondWater',
    label: 'dough',
    of: (input) => secondWater(input),
  },
};

/** The water that is still to be poured at this stage, and what it rests on; null where there is none. */
export interface Poured {
  readonly stage: string;
  readonly input: MixInput;
  readonly advice: StageWater;
}

export function pouredNext(
  kitchen: Kitchen,
  { bake, machine }: Focus,
  stage: string,
): Poured | null {
  const card = CARDS[stage];
  if (card === undefined || card.item in machine.context.answers) return null;
  const input = mixInput(kitchen, bake);
  const advice = card.of(input);
  return advice && { stage, input, advice };
}

/** What is unusual about it, most pressing first: ice, too hot, what was learned. Null: nothing. */
const special = ({ stage, input, advice }: Poured, write: Writer): string | null => {
  if (advice.ice > 0) return fill(water.ice, { grams: write.weight(Math.round(advice.ice)) });
  if (advice.capped) return fill(water.hot, { celsius: write.heat(advice.lands) });
  return stage === 'mix.weigh' ? learnedWords(input.offsets, write) : null;
};

/** What the number stands on that nobody measured; null where all was. */
const guessed = ({ stage, input, advice }: Poured, write: Writer): string | null => {
  const { flour, levain, tap } = atMix(input);
  if (advice.ice > 0 && !tap.read)
    return fill(water.guess.tap, { celsius: write.heat(tap.celsius) });
  if (stage === 'mix.weigh') return guessWords(flour, levain);
  const seed = seedOf(input);
  return stage === 'levain.feed' && !seed.read
    ? fill(water.guess.seed, { celsius: write.heat(seed.celsius) })
    : null;
};

const sentences = (poured: Poured, write: Writer): string =>
  [special(poured, write), guessed(poured, write)].filter(Boolean).join(' ');

/** How warm the water is to be, as it is said once something changed it. */
export const sayWater = (poured: Poured, units: Units): string =>
  fill(water.moved, { celsius: inTheAir(units).heat(poured.advice.celsius) });

/**
 * The bench's view with the water's temperature. At its own line it is the number to hit, in the place
 * of the card's other lines; before, it stands at its line, so that the water can be made ready.
 */
export function withWater(
  view: BenchView,
  kitchen: Kitchen,
  focus: Focus,
  units: Units,
): BenchView {
  const poured = pouredNext(kitchen, focus, view.stage);
  if (poured === null) return view;
  const { advice } = poured;
  const [seen, air] = [onScreen(units), inTheAir(units)];
  const { item, label: its } = CARDS[view.stage]!;
  const label = water[its];
  const celsius = seen.heat(advice.celsius);
  const { deed } = view.slab;
  if (deed?.kind !== 'press' || deed.item !== item) {
    const at = focus.bake.context.recipe.lines[CARDS[view.stage]!.list].findIndex(
      (line) => line.item === item,
    );
    const lines = view.lines.map((line, i) =>
      i === at ? { ...line, label: fill(water.line, { line: line.label, celsius }) } : line,
    );
    return { ...view, lines };
  }
  const span = showSpan(advice.cool, advice.warm, units);
  // What follows the line is of its bowls.
  const [line = '', ...rest] = view.spoken.split(/(?<=\.)\s/);
  return {
    ...view,
    lines: [],
    target: {
      value: celsius,
      label: fill(label, { celsius: seen.heat(advice.wanted) }),
      range: isKnown(advice, units) ? null : fill(water.range, { range: span }),
      opens: 'why',
    },
    detail: sentences(poured, seen) || view.detail,
    spoken: [
      fill(water.spoken, { line: line.replace(/\.$/, ''), celsius: air.heat(advice.celsius) }),
      ...rest,
      special(poured, air) ?? guessed(poured, air) ?? '',
    ]
      .filter(Boolean)
      .join(' '),
  };
}
