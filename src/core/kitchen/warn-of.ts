import type { Notice } from '../formula/notice.ts';
import type { Recipe } from '../formula/recipe.ts';
import { fridgeAdvice } from '../oven/fridge-load.ts';
import { heatShort } from '../oven/oven-heat.ts';
import { showLength } from '../speech/lengths.ts';
import type { Celsius } from '../units.ts';
import { bowlsFor } from './bowls.ts';
import { type Equipment } from './equipment.ts';
import { DIAL, FRIDGE_MOST, POT_LITRES_A_KILO } from './limits.ts';
import { coldDough } from './pots.ts';
import { placesFor, takesHeat } from './places.ts';
import { BOWL_MINUTES } from './split-bowls.ts';

/** A pot is heated at this, and loaves go in at the low end of 230–250, °C. Source: seen in print. */
const POT_HEAT: Celsius = 260;
const LOAD_HEAT: Celsius = 230;
/** A dial nearer than this is as good as right, °C. Judgement: an oven swings as far by itself. */
const DIAL_OFF = 5;
/** Dough that nobody has measured, °C. Common practice, no source. */
const USUAL_DOUGH: Celsius = 25;

const bowls = ({ dough }: Recipe, equipment: Equipment): readonly Notice[] => {
  const count = bowlsFor(dough, equipment.bowls);
  if (count === 1) return [];
  const short = equipment.bowls.count !== null && equipment.bowls.count < count;
  return [
    {
      key: short ? 'bowlsShort' : 'bowlsSplit',
      values: { count, grams: Math.round(dough / count), minutes: showLength(BOWL_MINUTES) },
    },
  ];
};

/** Many warm loaves warm the fridge, and each other: they go in group by group. */
const groups = ({ process, piece }: Recipe, loaves: number, dough: Celsius): readonly Notice[] => {
  const to = process.fridge;
  const { key, first, hours } = fridgeAdvice({ loaves, grams: piece, from: dough, to });
  return key === null
    ? []
    : [{ key: 'fridgeGroups', values: { count: first, got: Math.round(hours) } }];
};

const fridge = (
  recipe: Recipe,
  loaves: number,
  { fridge }: Equipment,
  dough: Celsius,
): readonly Notice[] => {
  if (recipe.process.retard === 0) return [];
  const { celsius, holds } = fridge;
  return [
    ...groups(recipe, loaves, dough),
    ...(celsius !== null && celsius > FRIDGE_MOST
      ? [{ key: 'fridgeWarm', values: { got: celsius } }]
      : []),
    ...(holds !== null && holds < loaves
      ? [{ key: 'fridgeSmall', values: { count: holds, got: loaves } }]
      : []),
  ];
};

/** A loaf that would lift its lid: told while it can still be made lighter. */
const pots = ({ process, piece }: Recipe, { pots }: Equipment): readonly Notice[] => {
  if (process.vessel !== 'pot') return [];
  const litres = Math.min(...pots.filter(takesHeat).map((pot) => pot.litres ?? Infinity));
  return litres < (piece / 1000) * POT_LITRES_A_KILO
    ? [{ key: 'potSmall', values: { got: litres } }]
    : [];
};

/** A cold shock chips enamel: its maker is asked before the pot is hot, once a firing. */
const enamel = ({ process }: Pick<Recipe, 'process'>, { pots }: Equipment): readonly Notice[] =>
  process.vessel === 'pot' &&
  process.retard > 0 &&
  pots.some((pot) => pot.material !== null && coldDough(pot) === 'ask')
    ? [{ key: 'coldAsk', values: {} }]
    : [];

/** What of lids and parchment this kitchen knows not to stand the heat: told once, as the oven is turned on. */
export const lids = (
  { process }: Pick<Recipe, 'process'>,
  equipment: Equipment,
): readonly Notice[] => {
  const { parchment } = equipment.oven;
  const plastic = equipment.pots.some(({ knob }) => knob === 'plastic');
  return [
    ...(process.vessel === 'pot' && plastic ? [{ key: 'knobPlastic', values: {} }] : []),
    ...(process.vessel !== 'tin' && parchment !== null && parchment < LOAD_HEAT
      ? [{ key: 'parchmentLow', values: { got: parchment } }]
      : []),
  ];
};

/** No pot that may be loaded hot. */
const cracks = ({ vessel }: Recipe['process'], equipment: Equipment): readonly Notice[] =>
  vessel === 'pot' && placesFor(equipment, 'pot') === 0 ? [{ key: 'potsNotHot', values: {} }] : [];

/**
 * What cold dough does to the pots of this kitchen: told as the oven is turned on, and to loaves that
 * came cold to an oven turned on for others, before the first of them goes in.
 */
export const coldWarnings = (
  recipe: Pick<Recipe, 'process'>,
  equipment: Equipment,
): readonly Notice[] =>
  recipe.process.retard > 0
    ? [...cracks(recipe.process, equipment), ...enamel(recipe, equipment)]
    : [];

const oven = ({ process }: Recipe, equipment: Equipment): readonly Notice[] => {
  const { most, atDial, preheat } = equipment.oven;
  const off = atDial === null ? 0 : atDial - DIAL;
  const short = heatShort(process.vessel, most);
  return [
    ...cracks(process, equipment),
    ...(short === null ? [] : [short]),
    ...(process.vessel !== 'tin' && Math.abs(off) >= DIAL_OFF
      ? [
          {
            key: process.vessel === 'stone' ? 'ovenDialStone' : 'ovenDial',
            values: { dial: POT_HEAT - off },
          },
        ]
      : []),
    ...(preheat !== null && preheat > process.preheat
      ? [{ key: 'ovenSlow', values: { got: preheat } }]
      : []),
  ];
};

/**
 * What this kitchen cannot do for a bake of so many loaves, at the step where it can still be
 * mended; at the read-through all of it. What was never said warns of nothing. `dough`: how warm the
 * loaves go into the fridge.
 */
export function warnOf(
  stage: string,
  recipe: Recipe,
  loaves: number,
  equipment: Equipment,
  dough: Celsius = USUAL_DOUGH,
): readonly Notice[] {
  if (stage === 'read.plan') {
    return [
      ...bowls(recipe, equipment),
      ...pots(recipe, equipment),
      ...fridge(recipe, loaves, equipment, dough),
      ...oven(recipe, equipment),
      ...enamel(recipe, equipment),
      ...lids(recipe, equipment),
    ];
  }
  if (stage === 'mix.weigh') return [...bowls(recipe, equipment), ...pots(recipe, equipment)];
  if (stage === 'proof.counter' || stage === 'proof.toFridge') {
    return fridge(recipe, loaves, equipment, dough);
  }
  if (stage === 'turnOn') {
    return [...lids(recipe, equipment), ...oven(recipe, equipment), ...enamel(recipe, equipment)];
  }
  return [];
}
