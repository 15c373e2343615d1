import { limitsOf } from '../../formula/process-limits.ts';
import type { Process } from '../../formula/formula.ts';
import { isWarm } from '../../formula/is-warm.ts';
import type { Recipe } from '../../formula/recipe.ts';
import { OPENING_BELIEF, type Belief } from '../../readiness/belief.ts';
import type { Minutes } from '../../units.ts';
import {
  bulkOf,
  counterOf,
  feedsFor,
  fives,
  fivesUp,
  proofOf,
  type Foretold,
} from './dough-waits.ts';
import { firstToLast, loadSteps } from './load-steps.ts';
import { fillingTrouble, longestProof, perishableIn } from './perishable.ts';
import type { FillingTrouble } from './perishable.ts';
import type { Kitchen, SideTouch, Step, Wait } from './types.ts';

/** Minutes of hands. Practice; mixing, second mix and dividing seen. */
const HANDS = { feed: 5, mix: 15, salt: 15, toFridge: 5, ovenOn: 5, perLoaf: 2 } as const;
const LEAST = { divide: 10, shape: 5 } as const;
/** Dough a bowl takes, g. Common practice, no source. */
const BOWL = 3000;
/** A fold may shift by so much, but is no sooner than this after the touch before it. Practice. */
const FOLD = { shift: 15, least: 20 } as const;

/** The least, usual and most minutes of a part of the process, as a wait with its prices (judgement). */
export function partWait(
  usual: Minutes,
  limits: { readonly least: Minutes; readonly most: Minutes },
  [weightShort, weightLong]: readonly [number, number],
): Wait {
  const typical = fives(usual);
  const min = Math.min(typical, fivesUp(limits.least));
  const max = Math.max(typical, fives(limits.most));
  return { min, typicalFrom: typical, typicalTo: typical, max, weightShort, weightLong };
}

function bulkTouches({ touches }: Process): SideTouch[] {
  let at = 0;
  let folds = 0;
  return touches.map(({ kind, after }) => {
    at += after;
    const name = kind === 'fold' ? `fold ${(folds += 1)}` : 'lamination';
    const soonest = kind === 'fold' ? fivesUp(Math.max(0, after - FOLD.least)) : FOLD.shift;
    const earlier = Math.min(FOLD.shift, soonest, fives(at));
    const hands = kind === 'fold' ? 5 : 10;
    return { name, hands, at: fives(at), earlier, later: FOLD.shift, weight: 1 };
  });
}

/** Shaping up to the oven's door: through the fridge, or warm. */
function shapeSteps(foretold: Foretold, kitchen: Kitchen, later: Minutes): Step[] {
  const { recipe } = foretold;
  const { process, loaves } = recipe;
  const limits = limitsOf(process);
  const each = fivesUp(HANDS.perLoaf * loaves);
  const isRound = process.shaping === 'round';
  const divide = Math.max(LEAST.divide, each);
  const shape = Math.max(LEAST.shape, each);
  const shaped = isRound ? divide + process.benchRest + shape : shape;
  const name = isRound ? 'shape' : 'spoon';
  const divided: Step[] = isRound
    ? [
        {
          name: 'divide',
          hands: divide,
          wait: partWait(process.benchRest, limits.benchRest ?? { least: 10, most: 30 }, [2, 2]),
        },
      ]
    : [];
  const oven = {
    name: 'oven on',
    hands: kitchen.ovenTimer ? 0 : HANDS.ovenOn,
    ...partWait(process.preheat, limits.preheat ?? { least: 30, most: 75 }, [4, 1]),
  };
  if (!isWarm(process)) {
    const counter = partWait(counterOf(foretold, shaped), { least: 0, most: 90 }, [3, 3]);
    const retard = partWait(process.retard, limits.retard ?? { least: 480, most: 2880 }, [6, 3]);
    return [
      ...divided,
      { name, hands: shape, wait: counter },
      {
        name: 'to fridge',
        hands: HANDS.toFridge,
        wait: retard,
        beforeNext: oven,
        uses: { fridge: loaves },
      },
    ];
  }
  const proof = proofOf(foretold, shaped);
  const most = perishableIn(recipe) ? longestProof(kitchen, { shaping: shape, later }) : Infinity;
  const wait = {
    ...proof,
    max: Math.min(proof.max, most),
    typicalTo: Math.min(proof.typicalTo, most),
    typicalFrom: Math.min(proof.typicalFrom, most),
  };
  return [...divided, { name, hands: shape, wait, beforeNext: oven }];
}

/** Loads of a bake in a kitchen whose pots (tins, places on the stone) take so many at a time. */
const loadsOf = ({ loaves }: Recipe, { pots }: Kitchen): number =>
  Math.ceil(loaves / Math.max(1, pots));

/**
 * Why a bake with a perishable filling has no plan in this kitchen, whatever the hour; null where it
 * may have one. Asked before anything is mixed.
 */
export function whyNoPlan(
  recipe: Recipe,
  kitchen: Kitchen,
  belief: Belief = OPENING_BELIEF,
): FillingTrouble | null {
  if (!perishableIn(recipe)) return null;
  const shaping = Math.max(LEAST.shape, fivesUp(HANDS.perLoaf * recipe.loaves));
  const foretold = { recipe, kitchen: kitchen.temperatureC, belief };
  const divided = Math.max(LEAST.divide, fivesUp(HANDS.perLoaf * recipe.loaves));
  const shaped = divided + recipe.process.benchRest + shaping;
  const shortest = isWarm(recipe.process) ? proofOf(foretold, shaped).min : 0;
  const later = firstToLast(loadSteps(recipe, kitchen, loadsOf(recipe, kitchen)));
  return fillingTrouble(recipe, kitchen, { shortest, shaping, later });
}

/**
 * A recipe as touches and waits, before anything is mixed: levain, bulk and warm proof by the dough
 * clock at the kitchen's temperature for the vigour believed, the rest by the process within the
 * trade's limits. `kitchen.pots`: loaves in one load. Weights are judgement.
 *
 * @throws Error `Not with {filling}: perishableRetarded.` where `whyNoPlan` has an answer
 */
export function expandFormula(
  recipe: Recipe,
  kitchen: Kitchen,
  belief: Belief = OPENING_BELIEF,
): Step[] {
  const trouble = whyNoPlan(recipe, kitchen, belief);
  if (trouble) throw new Error(`Not with ${trouble.filling}: ${trouble.key}.`);
  const { process, dough } = recipe;
  const foretold = { recipe, kitchen: kitchen.temperatureC, belief };
  const bowls = { bowls: Math.max(1, Math.ceil(dough / BOWL)) };
  const loads = loadSteps(recipe, kitchen, loadsOf(recipe, kitchen));
  return [
    {
      name: 'feed levain',
      hands: HANDS.feed,
      wait: { choices: feedsFor(recipe, kitchen.temperatureC, Math.exp(belief.mean)) },
    },
    {
      name: 'mix',
      hands: HANDS.mix,
      wait: partWait(process.rest, { least: 15, most: 60 }, [1, 1]),
      uses: bowls,
    },
    {
      name: 'salt and water',
      hands: HANDS.salt,
      wait: bulkOf(foretold, HANDS.mix, HANDS.salt),
      during: bulkTouches(process),
      uses: bowls,
    },
    ...shapeSteps(foretold, kitchen, firstToLast(loads)),
    ...loads,
  ];
}
