import { ANY_POT, KNOBS, POT_MATERIALS, type Pot } from '../../core/kitchen/equipment.ts';
import { DIAL, LIMITS } from '../../core/kitchen/limits.ts';
import { USUAL_NIGHT } from '../../core/kitchen/quiet-hours.ts';
import { boilingPoint } from '../../core/oven/boiling.ts';
import { coreTarget } from '../../core/oven/core-target.ts';
import { kitchenFields as words } from '../../core/speech/words/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat, wholeDegrees } from '../../core/speech/heats.ts';
import { keyedHeight, showHeight } from '../../core/speech/heights.ts';
import { keyedHeat, type Keyed } from '../../core/speech/keyed.ts';
import { showMinute } from '../../core/speech/show-time.ts';
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
  const { oven, height } = equipment();
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
    number(
      [words.oven.height, words.oven.heightAsk],
      // Nobody has to say that he bakes at the sea.
      height ?? 0,
      (n) => (n === 0 ? words.oven.seaLevel : showHeight(n, units)),
      keyedHeight(LIMITS.height, units),
      (value) => equip({ height: value }),
    ),
  ];
}

/** What the height does to a loaf's core; nothing is told of it at the sea. */
export function ovenDetail({ equipment, ways }: House): string | undefined {
  const { height } = equipment();
  if (!height) return undefined;
  const celsius = wholeDegrees(boilingPoint(height), ways());
  const crumbHeat = coreTarget(height).least;
  return fill(words.oven.boils, shown({ celsius, crumbHeat }, ways()));
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

const NEVER = 'never';
/** Hours offered: when a house goes to bed and gets up. Judgement. */
const FROM = [20, 21, 22, 23, 0];
const TO = [4, 5, 6, 7, 8, 9];

/** From when, until when; where no hour is quiet there is no end to ask for. */
export function nightFields({ equipment, equip, ways }: House): readonly Field[] {
  const { quiet } = equipment();
  const hours = (list: readonly number[]) =>
    list.map((hour) => ({ value: String(hour * 60), label: showMinute(hour * 60, ways().clock) }));
  const one = (
    name: 'from' | 'to',
    list: readonly number[],
    more: ChoiceField['options'],
  ): ChoiceField => ({
    kind: 'choice',
    label: words.night[name],
    ask: words.night[name],
    value: quiet ? showMinute(quiet[name], ways().clock) : words.night.never,
    chosen: quiet ? String(quiet[name]) : NEVER,
    options: [...hours(list), ...more],
    set: (value) =>
      equip({
        quiet:
          value === NEVER ? null : { ...(equipment().quiet ?? USUAL_NIGHT), [name]: Number(value) },
      }),
  });
  return [
    one('from', FROM, [{ value: NEVER, label: words.night.never }]),
    ...(quiet ? [one('to', TO, [])] : []),
  ];
}
