import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import {
  withFewerFolds,
  withFillingIn,
  withProof,
  withShaping,
  withVessel,
  type ChangedProcess,
} from '../../src/core/formula/process-changes.ts';
import { bakeStagesOf, ovenStagesOf } from '../../src/core/records/stages-of.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { Hand } from './support/hand.ts';
import { walkToEnd } from './support/onward.ts';

type Press = (formula: Formula, before: Formula) => ChangedProcess;

const warm: Press = (formula, before) => withProof(formula, 'warm', before);
const cold: Press = (formula, before) => withProof(formula, 'cold', before);
const tin: Press = (formula, before) => withVessel(formula, 'tin', before);
const pot: Press = (formula, before) => withVessel(formula, 'pot', before);
const stone: Press = (formula, before) => withVessel(formula, 'stone', before);
const spooned: Press = (formula, before) => withShaping(formula, 'scoop', before);
const byHand: Press = (formula, before) => withShaping(formula, 'round', before);
const atShape: Press = (formula) => withFillingIn(formula, 'shape');
const onSheet: Press = (formula) => withFillingIn(formula, 'sheet');
const fewer: Press = (formula) => withFewerFolds(formula);

/** Stages that only a look with another answer, or a bake that waits for another, passes. */
const BESIDE = ['holding', 'standing', 'tray', 'off', 'baking'];

const bakeOf = (formula: Formula) => {
  const { recipe } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  const hand = new Hand({ wait: waitFor });
  expect(hand.start('a', 'read.plan', ['a1', 'a2'], recipe!)).toBe(true);
  walkToEnd(hand);
  // What free hands are asked for meanwhile is no stage.
  const passed = (who: (one: string) => boolean) => [
    ...new Set(
      hand.says
        .filter((say) => who(say.who) && !say.stage.startsWith('lead.'))
        .map(({ stage }) => stage),
    ),
  ];
  return {
    hand,
    bake: passed((who) => who === 'a'),
    oven: passed((who) => who === 'oven' || who.startsWith('lane')),
  };
};

describe('a formula whose process was changed by presses', () => {
  it.each<[string, Parameters<typeof shippedFormula>[0], readonly Press[]]>([
    ['a pot loaf into a tin, warm, without folds', 'lane-wheat', [tin, warm, fewer, fewer, fewer]],
    ['a pot loaf onto the stone', 'lane-wheat', [stone]],
    ['a pot loaf into a spooned tin, the same day', 'lane-wheat', [tin, spooned, warm]],
    ['a tin loaf into the pot, overnight', 'barley-tin', [pot, cold]],
    ['a dense rye shaped by hand, in a pot', 'harbour-rye', [byHand, pot]],
    ['a filled loaf, filled at the shaping', 'cherry-hazelnut', [atShape]],
    ['a filled loaf on the same day, in a tin', 'olive-seed', [tin, warm]],
    ['a sheet alone, no fold', 'cherry-hazelnut', [fewer, fewer]],
    ['filled at the shaping and back on its sheet', 'cheese-seed', [atShape, fewer, onSheet, warm]],
  ])('%s: bakes from the read-through to the note, past each of its stages', (_, name, presses) => {
    const before = shippedFormula(name);
    const formula = presses.reduce((one, press): Formula => {
      const { process, reason } = press(one, before);
      if (!process) throw new Error(`Not on offer: ${reason.key}.`);
      return { ...one, process };
    }, before);
    expect(formula.process).not.toEqual(before.process);
    const { hand, bake, oven } = bakeOf(formula);
    expect(bake.sort()).toEqual([...bakeStagesOf(formula.process), 'done'].sort());
    const { vessel } = formula.process;
    const usual = ovenStagesOf(vessel).filter((stage) => !BESIDE.includes(stage));
    expect(oven.filter((stage) => !BESIDE.includes(stage)).sort()).toEqual([...usual].sort());
    expect(hand.replayed().trouble).toBeNull();
    expect(hand.stage('oven')).toBe('off');
  });
});
