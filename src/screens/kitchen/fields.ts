import { ANY_POT, KNOBS, POT_MATERIALS, type Pot } from '../../core/kitchen/equipment.ts';
import { DIAL, LIMITS } from '../../core/kitchen/limits.ts';
import { kitchenFields as words } from '../../core/speech/en/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/en/kitchen-page.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { keyedHeat, type Keyed } from '../../core/speech/keyed.ts';
import type { House } from '../house.ts';
import { keyedIn, type ChoiceField, type Field, type NumberField } from './field.ts';

const number = (
  [label, ask]: readonly [string, string],
  kept: number | null,
  show: (n: number) => string,
  keyed: Keyed,
  set: (value: number | null) => void,
): NumberField => ({
  kind: 'number',
  label,
  ask,
  value: kept === null ? null : show(kept),
  keyed,
  whole: false,
  set,
});

const inUnit = (
  texts: readonly [string, string],
  kept: number | null,
  limits: { readonly least: number; readonly most: number },
  unit: string,
  set: (value: number | null) => void,
): NumberField => number(texts, kept, (n) => `${n} ${unit}`, keyedIn(limits, unit), set);

/** What the oven reaches, really has, needs, and what paper may go into it. */
export function ovenFields({ equipment, equip, ways }: House): readonly Field[] {
  const { oven } = equipment();
  const units = ways();
  const heat = (name: 'most' | 'atDial' | 'parchment', ask: string): NumberField =>
    number(
      [words.oven[name], ask],
      oven[name],
      (n) => showHeat(n, units),
      keyedHeat(LIMITS[name === 'most' ? 'oven' : name], units),
      (value) => equip({ oven: { ...equipment().oven, [name]: value } }),
    );
  return [
    heat('most', words.oven.mostAsk),
    heat('atDial', fill(words.oven.atDialAsk, { celsius: showHeat(DIAL, units) })),
    inUnit(
      [words.oven.preheat, words.oven.preheatAsk],
      oven.preheat,
      LIMITS.preheat,
      words.units.minutes,
      (preheat) => equip({ oven: { ...equipment().oven, preheat } }),
    ),
    heat('parchment', words.oven.parchmentAsk),
  ];
}

export function fridgeFields({ equipment, equip, ways }: House): readonly Field[] {
  const { fridge } = equipment();
  const units = ways();
  return [
    number(
      [words.fridge.celsius, words.fridge.celsiusAsk],
      fridge.celsius,
      (n) => showHeat(n, units),
      keyedHeat(LIMITS.fridge, units),
      (celsius) => equip({ fridge: { ...equipment().fridge, celsius } }),
    ),
    {
      ...inUnit(
        [words.fridge.holds, words.fridge.holdsAsk],
        fridge.holds,
        LIMITS.holds,
        words.units.loaves,
        (holds) => equip({ fridge: { ...equipment().fridge, holds } }),
      ),
      whole: true,
    },
  ];
}

export function bowlFields({ equipment, equip }: House): readonly Field[] {
  const { bowls } = equipment();
  return [
    {
      ...inUnit(
        [words.bowls.count, words.bowls.countAsk],
        bowls.count,
        LIMITS.bowls,
        words.units.bowls,
        (count) => equip({ bowls: { ...equipment().bowls, count } }),
      ),
      whole: true,
    },
    inUnit(
      [words.bowls.litres, words.bowls.litresAsk],
      bowls.litres,
      LIMITS.bowlLitres,
      words.units.litres,
      (litres) => equip({ bowls: { ...equipment().bowls, litres } }),
    ),
  ];
}

/** One pot: clay, glass and enamel are asked for their maker's word, bare iron is not. */
export function potFields({ equipment, equip }: House, at: number): readonly Field[] {
  const pot = equipment().pots[at] ?? ANY_POT;
  const set = (change: Partial<Pot>): void =>
    equip({ pots: equipment().pots.map((one, i) => (i === at ? { ...one, ...change } : one)) });
  const { material, knob, cold } = pot;
  const choice = (field: Omit<ChoiceField, 'kind'>): ChoiceField => ({ kind: 'choice', ...field });
  const said = cold === null ? null : cold ? 'yes' : 'no';
  return [
    choice({
      label: words.pot.material,
      ask: kitchenPage.made,
      value: material && kitchenPage.materials[material],
      chosen: material ?? '',
      options: POT_MATERIALS.map((value) => ({ value, label: kitchenPage.materials[value] })),
      // What one maker allows says nothing of another material.
      set: (value) => set({ material: value as Pot['material'], cold: null }),
    }),
    inUnit(
      [words.pot.litres, words.pot.litresAsk],
      pot.litres,
      LIMITS.litres,
      words.units.litres,
      (litres) => set({ litres }),
    ),
    choice({
      label: words.pot.knob,
      ask: words.pot.knob,
      value: knob && words.pot.knobs[knob],
      chosen: knob ?? '',
      options: KNOBS.map((value) => ({ value, label: words.pot.knobs[value] })),
      set: (value) => set({ knob: value as Pot['knob'] }),
    }),
    ...(material === 'bareIron'
      ? []
      : [
          choice({
            label: words.pot.cold,
            ask: words.pot.coldAsk,
            value: said && words.pot.colds[said],
            chosen: said ?? '',
            options: (['yes', 'no'] as const).map((value) => ({
              value,
              label: words.pot.colds[value],
            })),
            set: (value) => set({ cold: value === 'yes' }),
          }),
        ]),
  ];
}
