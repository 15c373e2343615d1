import { readFileSync } from 'node:fs';
import { starterWait } from '../../../src/core/day/starter-wait.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { LoafAnswers } from '../../../src/core/log/loaf-names.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { DAY, HOUR, type Instant } from '../../../src/core/units.ts';
import { makeDice, type Dice } from '../../truth/synthetic.ts';
import type { BakeDay, Goes } from './bake-day.ts';
import { bakeThrough } from './bake-through.ts';
import { Hand } from './hand.ts';

/** What is asked of an invented year. */
export interface YearAsk {
  readonly bakes: number;
  readonly seed: number;
  /** When the last bake is over, at the latest; the first begins a year before, or sooner where they are many. */
  readonly until?: Instant;
  /** Whether the last bake but one is left standing in its bowl. */
  readonly leftOpen?: boolean;
}

/** From the folder that tests run in: a page's module has no path of its own. */
const FOLDER = 'assets/formulas';
/** A filled one and a plain one in pots, a plain one in tins. */
const BREADS = ['lane-wheat', 'cherry-hazelnut', 'barley-tin'] as const;
/** No bake of this kitchen takes longer. */
const LONGEST = 3 * DAY;
/** Kitchen over the year, °C: warmest in late July. Invented. */
const KITCHEN = { middle: 21.5, swing: 3.5, sd: 0.8, warmest: 205 } as const;
const UNTIL = Date.UTC(2031, 4, 2, 7);

const recipeOf = (id: string, loaves: number): Recipe => {
  const formula = JSON.parse(readFileSync(`${FOLDER}/${id}.json`, 'utf8')) as Formula;
  const { recipe, reason } = makeRecipe(formula, { loaves, piece: formula.piece });
  if (recipe === null) throw new Error(`${id}: ${reason.key}`);
  return recipe;
};

/** What a bulk that was cut short, or went on too long, leaves to be told. */
const TOLD: Readonly<Record<'good' | 'under' | 'over', LoafAnswers>> = {
  good: { holes: 'none', crumb: 'even' },
  under: { holes: 'underCrust', crumb: 'tight', spread: 'burst' },
  over: { holes: 'underCrust', spread: 'spread', sour: 'sour' },
};
const BULK = { good: 1, under: 0.8, over: 1.2 } as const;
const WORDS = ['Good ear, a little pale underneath.', 'The sheet tore once; fewer cherries.'];

/** How the nth bake goes: the odd ones come round whatever the seed. */
const goesOf = (n: number, { bakes, leftOpen = true }: YearAsk): Goes => {
  if (leftOpen && bakes > 2 && n === bakes - 2) return 'open';
  if (n % 12 === 4) return 'early';
  return n % 24 === 9 ? 'tray' : 'whole';
};

/** The nth bake of the year, thrown. */
function dayOf(n: number, at: Instant, lnV: number, dice: Dice, ask: YearAsk): BakeDay {
  const day = (at - Date.UTC(new Date(at).getUTCFullYear(), 0, 1)) / DAY;
  const season = Math.cos((2 * Math.PI * (day - KITCHEN.warmest)) / 365);
  const room = dice.normal(KITCHEN.middle + KITCHEN.swing * season, KITCHEN.sd);
  const came = dice.between(0, 1);
  const how = came < 0.6 ? 'good' : came < 0.8 ? 'under' : 'over';
  const burnt = dice.between(0, 1);
  const crust = burnt < 0.12 ? 'dark' : burnt < 0.24 ? 'pale' : 'golden';
  const goes = goesOf(n, ask);
  const own = dice.between(0, 1);
  const said = how === 'good' && crust !== 'golden' ? crust : how;
  return {
    bake: `bake-${n + 1}`,
    recipe: recipeOf(BREADS[n % BREADS.length]!, 2 + (n % 2)),
    room,
    mixed: dice.normal(25.5 + 0.3 * (room - KITCHEN.middle), 0.7),
    ...{ lnV, goes, crust },
    measured: n % 12 !== 7,
    bulk: goes === 'tray' ? 1.7 : BULK[how],
    slip: n % 6 === 1 ? 'takeBack' : n % 6 === 3 ? 'correct' : 'none',
    note:
      goes === 'tray' || said === 'over'
        ? 'over'
        : own < 0.2
          ? WORDS[n % 2]!
          : own < 0.3
            ? null
            : said,
    cut: goes === 'whole' && n % 3 !== 2 ? TOLD[how] : null,
  };
}

/**
 * Rows of so many bakes as one tablet would have them, each walked on the real machine with the real
 * models and a turned clock. The kitchen is invented, the same seed throws the same year: bakes from
 * read-through to note with readings, loads and weights; now and then one is ended early, one goes over
 * and bakes flat, one has no reading; presses are taken back and readings mended; the last but one is
 * left open. The starter's ln v walks by .10 from bake to bake.
 */
export function bakedYear(ask: YearAsk): readonly LogRecord[] {
  const { bakes, seed, until = UNTIL } = ask;
  const dice = makeDice(seed);
  const apart = Math.max(LONGEST, Math.floor(365 / bakes) * DAY);
  const first = until - LONGEST - (bakes - 1) * apart;
  const hand = new Hand({ now: first, wait: waitFor, starter: starterWait });
  let lnV = dice.normal(0, 0.15);
  for (let n = 0; n < bakes; n += 1) {
    const morning = first + n * apart + dice.between(-1, 1) * HOUR;
    hand.turnTo(Math.max(hand.now, Math.round(morning)));
    lnV += dice.normal(0, 0.1);
    bakeThrough(hand, dice, dayOf(n, hand.now, lnV, dice, ask));
  }
  return hand.records;
}
