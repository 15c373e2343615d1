import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import { readFormula } from '../../src/core/formula/read-formula.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { layClips } from '../../src/core/speech/clips.ts';
import { bare } from '../../src/core/speech/own-words.ts';
import { isPaced, rateOf } from '../../src/core/speech/pace.ts';
import { several } from '../../src/core/speech/words/several.ts';
import { fill } from '../../src/core/speech/fill.ts';
import { utterancesOf } from '../../src/core/speech/utterances.ts';
import { showTime } from '../../src/core/speech/show-time.ts';
import { EQUIPMENT, type Equipment } from '../../src/core/kitchen/equipment.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { speakOf } from '../../src/app/speak-of.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { withTarget } from '../../src/screens/bench/measured-view.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { longerWords } from '../../src/screens/bench/longer.ts';
import { bakeSaid, sayFor } from '../../src/screens/bake-name.ts';
import { nameIn } from '../../src/screens/stage-names.ts';
import type { Ways } from '../../src/screens/house.ts';
import { asSpoken, clipIndex } from '../core/speech/support/as-spoken.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn } from '../machines/support/onward.ts';

/** Every bread that comes with the program, as a bake pins it. */
const RECIPES: readonly (readonly [string, Recipe])[] = readdirSync('assets/formulas').map(
  (file) => {
    const { formula } = readFormula(
      JSON.parse(readFileSync(join('assets/formulas', file), 'utf8')),
    );
    const { recipe } = makeRecipe(formula!, {
      loaves: 3,
      piece: formula!.piece,
      scale: EQUIPMENT.scale,
    });
    return [file, recipe!] as const;
  },
);
const WAYS = [
  { heat: 'C', weight: 'g', clock: '24' },
  { heat: 'F', weight: 'oz', clock: '12' },
] as const satisfies readonly Partial<Ways>[];
/** A kitchen that is warned of whatever can be warned of. */
const POOR: Equipment = {
  ...EQUIPMENT,
  fridge: { ...EQUIPMENT.fridge, celsius: 8, holds: 1 },
  oven: { ...EQUIPMENT.oven, most: 215, parchment: 200, atDial: 247, preheat: 95 },
  bowls: { count: 1, kilos: 3, litres: 3 },
};

/** What would end the bake at its levain. */
const ENDS = /pinkOrMould/;

/** What only a pot has. */
const POT = /\b(pots?|lids?)\b/i;

/** Numbers without order that come out alike every time: a tile instead of the slab, now and then. */
const chance = (seed: number) => {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
};

/** Everything the voice is handed in a bake, step by step, with its stage. */
function saidIn(recipe: Recipe, ways: (typeof WAYS)[number], seed: number, two: boolean) {
  const hour = (at: number) => showTime(new Date(at).toISOString().slice(11, 16), ways.clock);
  const equipment = seed % 2 === 0 ? EQUIPMENT : POOR;
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  if (two) hand.start('b', 'bulk.between', ['b1'], recipe);
  hand.start('a', 'read.plan', ['a1', 'a2', 'a3'], recipe);
  const pick = chance(seed + 1);
  const said: { readonly at: string; readonly words: string }[] = [];
  for (let steps = 0; steps < 220 && hand.stage('a') !== null; steps += 1) {
    const focus = focusOn(hand.kitchen, 'a');
    if (focus === null) break;
    const plain = benchView(hand.kitchen, focus, hour, questionView, ways, equipment);
    const view = withTarget(plain, hand.kitchen, focus, { ...ways } as never, hour, hand.now);
    const add = (words: string | null) =>
      words && said.push({ at: `${view.who} ${view.stage} ${view.task ?? ''}`, words });
    add(sayFor(hand.kitchen, 'a', [view.closing, view.spoken].filter(Boolean).join(' '), hour));
    add(view.care);
    // What a pedal comes to is said as it is chosen.
    for (const { label } of [view.slab, ...view.tiles]) add(label);
    // What is asked for: how much longer, and where another bake stands.
    add(longerWords({ now: () => hand.now, hour }, view));
    const stage = nameIn(hand.kitchen, view.who, view.stage);
    add(fill(several.moved, { bake: bakeSaid(hand.kitchen, 'a', hour), stage }));
    for (const say of hand.says.splice(0)) add(speakOf(say, hand.kitchen, hour, ways, equipment));
    const before = hand.records.length;
    const deadline = hand.deadline(view.who);
    if (view.task !== null) hand.do(view.slab.deed ?? view.tiles[0]!.deed);
    else if (deadline !== null) {
      const { marks } = focus.machine.context;
      const next = Object.values(marks).filter((at) => at > hand.now && at <= deadline);
      hand.turnTo(Math.max(hand.now, Math.min(deadline, ...next)));
      continue;
    } else {
      const tiles = view.tiles.filter(({ deed }) => !ENDS.test(JSON.stringify(deed)));
      const tile = pick() < 0.3 ? tiles[Math.floor(pick() * tiles.length)] : undefined;
      const deed = tile?.deed ?? view.slab.deed;
      if (deed !== null) hand.do(deed);
    }
    if (hand.records.length === before && !stepOn(hand, view.who)) hand.turn(10);
  }
  return said;
}

/** Names of fillings are the baker's own words: they are read, not said. */
const ownIn = ({ formula }: Recipe): readonly string[] =>
  formula.fillings.flatMap(({ name }) => [name, `of ${name}`]);

/** What no clip says, the names of fillings left out. */
const missingIn = (words: string, own: readonly string[]): readonly string[] => {
  const laid = layClips(words, (id) => clipIndex.has(id), own);
  const named = laid.own.flatMap((phrase) => phrase.split(' '));
  return laid.missing.filter((word) => !named.includes(bare(word)) && !named.includes(word));
};

describe.each(RECIPES)('all that is said in a bake of %s', (_, recipe) => {
  it.each([
    [0, 0, false],
    [1, 1, true],
    [0, 3, true],
    [1, 4, false],
    [0, 7, false],
  ])('has its clips and its pace: units %i, way %i, two bakes: %s', (units, seed, two) => {
    const said = saidIn(recipe, WAYS[units]!, seed, two);
    const own = ownIn(recipe);
    const stages = new Set(said.map(({ at }) => at));
    expect(stages.size).toBeGreaterThan(12);
    expect(said.filter(({ words }) => words.includes('List complete.')).length).toBeGreaterThan(1);
    for (const { at, words } of said) {
      expect(words, at).not.toMatch(/[{}]|undefined|NaN/);
      // No pot is spoken of where loaves bake on a stone or in tins.
      const { vessel } = recipe.process;
      if (vessel !== 'pot' && /^(oven|lane)/.test(at)) expect(words, at).not.toMatch(POT);
      expect(missingIn(words, own), `${at}: ${words}`).toEqual([]);
      for (const pace of ['grown', 'small'] as const)
        for (const utterance of utterancesOf(words, pace)) {
          const { spoken, seconds } = asSpoken(utterance, pace, own);
          const told = `${at}: ${utterance}: ${JSON.stringify(rateOf(spoken))}`;
          expect.soft(isPaced(spoken, pace), told).toBe(true);
          // A sum of clips that is 8 s is not over it.
          expect.soft(seconds, told).toBeLessThanOrEqual(8 + 1e-9);
        }
    }
  });
});
