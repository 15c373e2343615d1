import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { NumberSlot } from '../../src/core/records/reading-slot.ts';
import { keysFor } from '../../src/core/speech/reading-text.ts';
import type { Units } from '../../src/core/units.ts';
import { numberOf, typeKey, type PadKey } from '../../src/parts/typed.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { kindsAt } from '../../src/screens/bench/readings/kinds.ts';
import {
  besideKeys,
  numberKinds,
  weightAs,
} from '../../src/screens/bench/readings/number-kinds.ts';
import { benchView, type Third } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn } from '../machines/support/onward.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../machines/support/recipe.ts';

const METRIC: Units = { heat: 'C', weight: 'g' };
const THEIRS: Units = { heat: 'F', weight: 'oz' };
const MOST = 6;

/** The third control of every stage that a day of pots, tins, a spooned dough or a stone comes by. */
const thirds = (): ReadonlyMap<string, Third | null> => {
  const found = new Map<string, Third | null>();
  const walk = (recipe: Recipe, from: string): void => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', from, ['a1', 'a2'], recipe);
    for (let steps = 0; steps < 300; steps += 1) {
      const focus = focusOn(hand.kitchen, 'a');
      if (focus === null) return;
      const { who, stage, third, task } = benchView(
        hand.kitchen,
        focus,
        () => '12:00',
        questionView,
        METRIC,
      );
      if (task === null) found.set(stage, third);
      if (!stepOn(hand, who)) throw new Error(`The way ends at ${stage}.`);
    }
  };
  walk(RECIPE, 'read.plan');
  walk(TIN, 'levain.feed');
  walk(SCOOP, 'levain.feed');
  walk(STONE, 'oven.queued');
  return found;
};

/** The longest number a home kitchen measures of each kind, as a probe, a tub or a scale shows it. */
const LONGEST: readonly (readonly [NumberSlot, Units, number])[] = [
  ['doughTemperature', METRIC, 24.5],
  ['doughTemperature', THEIRS, 76.5],
  ['kitchenTemperature', METRIC, 21.5],
  ['kitchenTemperature', THEIRS, 71.5],
  ['coreTemperature', METRIC, 96.5],
  ['coreTemperature', THEIRS, 204.5],
  ['flourTemperature', METRIC, 18.5],
  ['flourTemperature', THEIRS, 66.5],
  ['levainTemperature', METRIC, 23.5],
  ['levainTemperature', THEIRS, 74.5],
  ['fillingTemperature', METRIC, 18.5],
  ['fillingTemperature', THEIRS, 66.5],
  ['water.tap', METRIC, 12.5],
  ['water.tap', THEIRS, 54.5],
  ['water.bowl', METRIC, 31.5],
  ['water.bowl', THEIRS, 87.5],
  ['rise.dough', METRIC, 120],
  ['rise.levain', METRIC, 220],
  ['weight.dough', METRIC, 1840],
  ['weight.dough', METRIC, 12_300],
  ['weight.dough', THEIRS, 64.9],
  ['weight.dough', THEIRS, 434],
  ['weight.piece', METRIC, 1205],
  ['weight.piece', THEIRS, 42.5],
  ['weight.loaf', METRIC, 1150],
  ['weight.loaf', THEIRS, 40.6],
];

const OWN: Readonly<Record<string, NumberSlot>> = {
  'mix.work': 'weight.dough',
  'mix.temperature': 'doughTemperature',
  'shape.divide': 'weight.piece',
  'shape.scoop': 'weight.piece',
  'cool.handOver': 'weight.loaf',
};

/** The keys of a number as they are typed: with its point, without, or in kilograms. */
const textsOf = (number: number): readonly string[] =>
  [String(number).replace('.', ''), String(number), String(number / 1000)].toSorted(
    (a, b) => a.length - b.length,
  );

/** The presses from the bench until it is taken: the way to the page, the keys, and what it is. */
const pressesOf = (
  stage: string,
  third: Third | null,
  [slot, units, n]: (typeof LONGEST)[number],
): number => {
  const { most, unit } = keysFor(slot, 'possible', units);
  const onItsOwn = (text: string): boolean => {
    const keys = [...text].reduce((so, key) => typeKey(so, key as PadKey, most), '');
    return (unit === 'g' ? weightAs(keys, slot, units) : numberOf(keys)) === n;
  };
  const way = third === 'reading' ? 1 : 2;
  const first = textsOf(n).map((text) => {
    const kinds = numberKinds(text, stage, units);
    const isIn = (rest: boolean) =>
      besideKeys(kinds, rest).shown.some((kind) => kind.slot === slot && kind.typed === n);
    return text.length + (isIn(false) ? 1 : isIn(true) ? 2 : Infinity);
  });
  const own = textsOf(n).find(onItsOwn)?.length ?? Infinity;
  // Where the act is that number, its keypad opens straight from the bench.
  return Math.min(way + Math.min(...first), OWN[stage] === slot ? 1 + own + 1 : Infinity);
};

/**
 * What makes sense at a stage and takes seven all the same: New reading is under More there. A core of
 * four digits is a baked loaf's: of these only the judged one has it, and its wait before takes it in six.
 */
const SEVEN: Readonly<Record<string, readonly string[]>> = {
  'mix.temperature': ['weight.dough 1840', 'weight.dough 12300', 'weight.dough 64.9'],
  ...Object.fromEntries(
    ['proof.look', 'proof.poke', 'poke', 'lift', 'vent', 'judge', 'cool.handOver'].map((stage) => [
      stage,
      ['coreTemperature 204.5'],
    ]),
  ),
};

describe('the presses from the bench to a reading that is taken', () => {
  const all = [...thirds()];
  const over = (stage: string, third: Third | null, natural: boolean): readonly string[] =>
    LONGEST.filter(
      (one) =>
        (!natural || kindsAt(stage).first.some(({ id }) => id === one[0])) &&
        pressesOf(stage, third, one) > MOST,
    ).map(([slot, , n]) => `${slot} ${n}`);

  it('are six at most for every number wherever New reading stands on the bench', () => {
    const there = all.filter(([, third]) => third === 'reading');
    expect(there.length).toBeGreaterThan(30);
    for (const [stage, third] of there) expect(over(stage, third, false), stage).toEqual([]);
  });

  it('are six elsewhere for what makes sense there, but for these, and seven for anything', () => {
    for (const [stage, third] of all) {
      expect(over(stage, third, true), stage).toEqual(SEVEN[stage] ?? []);
      for (const one of LONGEST)
        expect(pressesOf(stage, third, one), `${stage} ${one.join(' ')}`).toBeLessThanOrEqual(7);
    }
  });

  it('are six at most for every sign, under More too', () => {
    for (const [stage, third] of all) {
      const { first, others } = kindsAt(stage);
      for (const { page } of [...first, ...others]) {
        if (page.at !== 'pictures') continue;
        const tile = first.some((kind) => kind.page === page) ? 1 : 2;
        const pictures = page.slot === 'edge' ? 2 : 1;
        expect((third === 'reading' ? 1 : 2) + tile + pictures).toBeLessThanOrEqual(MOST);
      }
    }
  });
});
