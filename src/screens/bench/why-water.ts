import { atMix, type Known } from '../../core/day/mix-known.ts';
import { seedOf } from '../../core/day/feed-water.ts';
import { WARMEST_WATER } from '../../core/heat/heats.ts';
import { LEARNED_AFTER, usualOffset } from '../../core/heat/learned.ts';
import { multiplierAdvice } from '../../core/heat/multiplier.ts';
import { whyWater } from '../../core/speech/words/water.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Units } from '../../core/units.ts';
import type { Poured } from './water-view.ts';
import { AS_RECKONED, isKnown, onScreen, showSpan, type Writer } from './water-words.ts';

/** What a water's temperature rests on: its title, what went into the sum, and what to think of it. */
export interface WhyWater {
  readonly title: string;
  /** The press that changes what is wanted; null where nothing of it can be. */
  readonly change: string | null;
  readonly rows: readonly { readonly name: string; readonly value: string }[];
  readonly words: readonly string[];
}

const taught = (offsets: readonly number[], write: Writer): string | null => {
  if (offsets.length === 0) return null;
  const offset = usualOffset(offsets);
  const { as, asReckoned, one, some, known } = whyWater;
  const count = Math.min(offsets.length, LEARNED_AFTER);
  const got =
    Math.abs(offset) < AS_RECKONED
      ? asReckoned
      : fill(offset > 0 ? as.warmer : as.cooler, { got: write.apart(offset) });
  return fill(count === 1 ? one : count < LEARNED_AFTER ? some : known, { got, count });
};

/** Everything behind a water's temperature, in the baker's units. Pure. */
export function whyOf({ stage, input, advice }: Poured, units: Units): WhyWater {
  const write = onScreen(units);
  const at = atMix(input);
  const row = (name: string, { celsius, read }: Known, otherwise: string = whyWater.guessed) => ({
    name,
    value: fill(read ? whyWater.read : otherwise, { celsius: write.heat(celsius) }),
  });
  const feeds = stage === 'levain.feed';
  const first = stage === 'mix.weigh';
  const rule = multiplierAdvice(
    advice.wanted,
    { flour: at.flour.celsius, room: at.kitchen.celsius, levain: at.levain.celsius },
    'hand',
  );
  const named = input.recipe.formula.doughCelsius !== undefined;
  const wanted = at.wanted.read ? whyWater.told : named ? whyWater.ofFormula : whyWater.usual;
  const range = showSpan(advice.cool, advice.warm, units);
  return {
    change: feeds ? null : fill(whyWater.change, { celsius: write.heat(advice.wanted) }),
    title: fill(whyWater.title, { celsius: write.heat(advice.celsius) }),
    rows: [
      feeds
        ? { name: whyWater.levain, value: write.heat(advice.wanted) }
        : { name: whyWater.dough, value: fill(wanted, { celsius: write.heat(advice.wanted) }) },
      row(whyWater.flour, at.flour),
      feeds ? row(whyWater.seed, seedOf(input)) : row(whyWater.levainNow, at.levain),
      row(whyWater.kitchen, at.kitchen, whyWater.told),
      ...(advice.ice > 0 ? [row(whyWater.tap, at.tap)] : []),
    ],
    words: [
      isKnown(advice, units) ? null : fill(whyWater.wetting, { range }),
      first ? taught(input.offsets, write) : null,
      stage === 'mix.salt' ? whyWater.second : null,
      advice.capped ? fill(whyWater.most, { celsius: write.heat(WARMEST_WATER) }) : null,
      first ? fill(whyWater.rule, { celsius: write.heat(rule) }) : null,
      feeds ? null : whyWater.measure,
    ].filter((text) => text !== null),
  };
}
