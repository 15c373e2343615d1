import { describe, expect, it } from 'vitest';
import type { Filling, Formula, Process } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import {
  fillingInOf,
  proofOf,
  withFewerFolds,
  withFillingIn,
  withMoreFolds,
  withProof,
  withShaping,
  withVessel,
  type ChangedProcess,
} from '../../../src/core/formula/process-changes.ts';
import { processWarnings } from '../../../src/core/formula/process-warnings.ts';
import { usualOven } from '../../../src/core/formula/process-usual.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { stepReasons } from '../../../src/core/speech/words/notices.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';
import { shippedFormula, SHIPPED } from './shipped.ts';

const wheat = shippedFormula('lane-wheat');
const cherry = shippedFormula('cherry-hazelnut');
const cheese: Filling = {
  ...{ id: 'cheese', name: 'fresh cheese', pct: 20, keeps: 'perishable' },
  allergens: ['milk'],
};

const made = (changed: ChangedProcess): Process => {
  if (changed.process === null) throw new Error(`Not on offer: ${changed.reason.key}.`);
  return changed.process;
};
const of = (formula: Formula, changed: ChangedProcess): Formula => ({
  ...formula,
  process: made(changed),
});
const why = (changed: ChangedProcess): string | undefined => changed.reason?.key;

describe('the usual minutes of a vessel', () => {
  it.each(['lane-wheat', 'olive-seed', 'barley-tin', 'harbour-rye'] as const)(
    'are those of our own %s, at its own piece',
    (name) => {
      const { process, piece } = shippedFormula(name);
      const { vessel, shaping, preheat, lidded, open, recovery } = process;
      expect(usualOven(vessel, shaping, piece)).toEqual({ preheat, lidded, open, recovery });
    },
  );

  it('are fitted to a piece of another weight, as those of a bake are', () => {
    expect(usualOven('pot', 'round', 500)).toMatchObject({ lidded: 15, open: 17 });
    expect(usualOven('tin', 'round', 1200)).toMatchObject({ lidded: 0, open: 48 });
  });
});

describe('a change of the vessel', () => {
  it('brings that vessel’s minutes of the oven and touches nothing else', () => {
    const tin = made(withVessel(wheat, 'tin', wheat));
    expect(tin).toEqual({
      ...wheat.process,
      ...{ vessel: 'tin', preheat: 30, lidded: 0, open: 41, recovery: 10 },
    });
    expect(processWarnings(tin)).toEqual([]);
  });

  it('turned back has what the formula had', () => {
    const own = { ...wheat, process: { ...wheat.process, lidded: 22, open: 16 } };
    const tin = of(own, withVessel(own, 'tin', own));
    expect(made(withVessel(tin, 'pot', own))).toEqual(own.process);
  });

  it('is not on offer for a dough that runs', () => {
    const rye = shippedFormula('harbour-rye');
    for (const vessel of ['pot', 'stone'] as const) {
      expect(why(withVessel(rye, vessel, rye))).toBe('scoopNeedsTin');
    }
  });
});

describe('a change of the last rise', () => {
  it('from cold to warm has the minutes of our own loaf of that vessel', () => {
    const today = shippedFormula('lane-today').process;
    expect(made(withProof(wheat, 'warm', wheat))).toMatchObject({
      ...{ counter: 0, retard: 0, warm: today.warm },
    });
    const tin = of(wheat, withVessel(wheat, 'tin', wheat));
    const { warm } = shippedFormula('barley-tin').process;
    expect(made(withProof(tin, 'warm', wheat))).toMatchObject({ retard: 0, warm });
  });

  it('turned back has its own hours in the fridge, whatever it bakes in by then', () => {
    const own = shippedFormula('wholemeal');
    const warm = of(own, withProof(own, 'warm', own));
    const tin = of(warm, withVessel(warm, 'tin', own));
    expect(made(withProof(tin, 'cold', own))).toMatchObject({ counter: 20, retard: 720, warm: 0 });
  });

  it('to cold is not on offer where a filling spoils, and says which', () => {
    const today = { ...shippedFormula('lane-today'), fillings: [cheese] };
    const changed = withProof(today, 'cold', today);
    expect(changed.reason).toEqual({
      key: 'perishableRetarded',
      values: { filling: 'fresh cheese' },
    });
    expect(proofOf(today.process)).toBe('warm');
  });
});

describe('a change of the shaping', () => {
  it('to spooned wants the tin first, then has a dense rye’s rests and minutes', () => {
    expect(why(withShaping(wheat, 'scoop', wheat))).toBe('spoonWantsTin');
    const tin = of(wheat, withVessel(wheat, 'tin', wheat));
    const spooned = made(withShaping(tin, 'scoop', wheat));
    expect(spooned).toMatchObject({ shaping: 'scoop', touches: [], benchRest: 0, cool: 960 });
    expect(processWarnings(spooned)).toEqual([]);
    const again = made(withShaping({ ...tin, process: spooned }, 'round', wheat));
    expect(again).toEqual(tin.process);
  });

  it('of a warm one goes with how long such loaves rise', () => {
    const barley = shippedFormula('barley-tin');
    const { warm } = shippedFormula('harbour-rye').process;
    expect(made(withShaping(barley, 'scoop', barley)).warm).toBe(warm);
  });
});

describe('the folds and the filling', () => {
  it('are more or fewer by presses, within what a reader takes', () => {
    let formula = wheat;
    for (let n = 3; n < 12; n += 1) formula = of(formula, withMoreFolds(formula));
    expect(formula.process.touches).toHaveLength(12);
    expect(readFormula(formula).formula).toEqual(formula);
    expect(why(withMoreFolds(formula))).toBe('touchesFull');
    for (let n = 12; n > 0; n -= 1) formula = of(formula, withFewerFolds(formula));
    expect(formula.process.touches).toEqual([]);
    expect(why(withFewerFolds(formula))).toBe('noFold');
  });

  it('go in on a sheet or at the shaping, where there is a filling at all', () => {
    const shaped = of(cherry, withFillingIn(cherry, 'shape'));
    expect(fillingInOf(shaped.process)).toBe('shape');
    expect(made(withFillingIn(shaped, 'sheet'))).toEqual(cherry.process);
    expect(why(withFillingIn(wheat, 'sheet'))).toBe('sheetWantsFilling');
  });

  it('have no sheet in a spooned dough, nor for what spoils, nor beyond the last touch', () => {
    const rye = { ...shippedFormula('harbour-rye'), fillings: cherry.fillings };
    expect(why(withFillingIn(rye, 'sheet'))).toBe('spoonNoSheet');
    const today = { ...shippedFormula('lane-today'), fillings: [cheese] };
    expect(why(withFillingIn(today, 'sheet'))).toBe('perishableRetarded');
    const touches = Array.from({ length: 12 }, () => ({ kind: 'fold', after: 1 }) as const);
    const full = { ...cherry, process: { ...cherry.process, touches } };
    expect(why(withFillingIn(full, 'sheet'))).toBe('touchesFull');
  });
});

/** Every process that presses lead to from a formula, by what it is made of. */
function reached(start: Formula): readonly Formula[] {
  const seen = new Map<string, Formula>();
  const open = [start];
  for (let formula = open.pop(); formula; formula = open.pop()) {
    const key = JSON.stringify(formula.process);
    if (seen.has(key) || formula.process.touches.length > 3) continue;
    seen.set(key, formula);
    const changes = [
      ...(['pot', 'stone', 'tin'] as const).map((one) => withVessel(formula, one, start)),
      ...(['cold', 'warm'] as const).map((one) => withProof(formula, one, start)),
      ...(['round', 'scoop'] as const).map((one) => withShaping(formula, one, start)),
      ...(['sheet', 'shape'] as const).map((one) => withFillingIn(formula, one)),
      withMoreFolds(formula),
      withFewerFolds(formula),
    ];
    for (const { process } of changes) if (process) open.push({ ...formula, process });
  }
  return [...seen.values()];
}

describe('whatever presses lead to', () => {
  it.each(SHIPPED)('from %s is read, weighed and usual in its minutes', (name) => {
    const start = shippedFormula(name);
    const all = reached(start);
    expect(all.length).toBeGreaterThan(20);
    for (const formula of all) {
      expect(readFormula(formula).formula).toEqual(formula);
      const { recipe } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
      expect(recipe).not.toBeNull();
      const told = processWarnings(formula.process).map(({ key, values }) => [key, values['part']]);
      // A sheet may move by folds that were taken out before it, and is told then.
      expect(told.filter(([, part]) => part !== 'laminate' && part !== 'fold')).toEqual([]);
    }
    const kinds = new Set(
      all.map(({ process }) => [process.vessel, process.shaping, proofOf(process)].join(' ')),
    );
    expect(kinds.size).toBe(8);
  });

  it('with what spoils never is a dough that cannot be made', () => {
    const start = { ...shippedFormula('barley-tin'), fillings: [cheese] };
    for (const formula of reached(start)) {
      const { reason } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
      expect(reason).toBeUndefined();
    }
  });
});

it('every reason has its sentence', () => {
  for (const key of Object.keys(stepReasons)) {
    expect(tellNotice({ key, values: { most: 12 } }, { heat: 'C', weight: 'g' })).toMatch(/\.$/);
  }
});
