import type { WeeklyWindow } from '../day/plan/wall-clock.ts';
import { Fields, readOneOf, Refused, type Misread } from '../formula/read-fields.ts';
import { EAR_ENGINES } from '../ear/person.ts';
import type { Pace } from '../speech/pace.ts';
import {
  EQUIPMENT,
  EVERY_DAY,
  HEARD,
  KNOBS,
  POT_MATERIALS,
  SCALE_STEPS,
  type Equipment,
  type Pot,
} from './equipment.ts';
import { LIMITS } from './limits.ts';
import { keyOf, mayTeach, PEDAL_DOES, type PedalKeys } from './pedal-keys.ts';

export type ReadEquipment =
  | { readonly equipment: Equipment; readonly reason?: never }
  | { readonly equipment: null; readonly reason: Misread };

/** Later than any tablet's clock should say: the year 2100. */
const FAR = 4_102_444_800_000;
const DAY_MINUTES = 1439;
const EARS = ['off', ...EAR_ENGINES] as const;
const PACE_NAMES = ['grown', 'small'] as const satisfies readonly Pace[];
/** Older settings knew a call that was heard only faintly: it may be missed. */
const FAINT = 'faint';

/** A field that may be missing (an older setting) or null (not said). */
const maybe = <T>(fields: Fields, name: string, missing: T, one: () => T): T | null => {
  if (!fields.has(name)) return missing;
  return fields.isNull(name) ? null : one();
};

/** A number within its limits, or not said. */
const measured = (fields: Fields, name: string, limits: keyof typeof LIMITS): number | null =>
  maybe(fields, name, null, () => fields.number(name, LIMITS[limits].least, LIMITS[limits].most));

const readPot = (value: unknown, path: string): Pot => {
  const pot = Fields.read(value, path);
  return {
    material: maybe(pot, 'material', null, () => pot.oneOf('material', POT_MATERIALS)),
    litres: measured(pot, 'litres', 'litres'),
    knob: maybe(pot, 'knob', null, () => pot.oneOf('knob', KNOBS)),
    cold: maybe(pot, 'cold', null, () => pot.flag('cold')),
  };
};

const readWeekday = (value: unknown, path: string): number => readOneOf(value, path, EVERY_DAY);

/** A window of the week: over midnight where it does not end later than it begins. */
const readWindow = (value: unknown, path: string): WeeklyWindow => {
  const fields = Fields.read(value, path);
  return {
    name: fields.name('name'),
    weekdays: [...new Set(fields.list('weekdays', 1, EVERY_DAY.length, readWeekday))],
    from: fields.number('from', 0, DAY_MINUTES, true),
    to: fields.number('to', 0, DAY_MINUTES, true),
    canBend: fields.has('canBend') ? fields.flag('canBend') : true,
  };
};

/** A key that may not be taught, or is taught twice, is none. */
const readPedal = (fields: Fields): PedalKeys => {
  const found = PEDAL_DOES.flatMap((does) =>
    fields.has(does) ? [[does, keyOf(fields.text(does))] as const] : [],
  );
  const good = found.filter(
    ([, key], n) => mayTeach(key) && found.findIndex(([, other]) => other === key) === n,
  );
  return Object.fromEntries(good);
};

const read = (value: unknown): Equipment => {
  const all = Fields.read(value, '');
  const part = <K extends keyof Equipment>(
    name: K,
    one: (fields: Fields) => Equipment[K],
  ): Equipment[K] => (all.has(name) ? one(all.inner(name)) : EQUIPMENT[name]);
  const count = (fields: Fields, name: string, limits: keyof typeof LIMITS): number =>
    fields.number(name, LIMITS[limits].least, LIMITS[limits].most, true);
  const nullPart = <K extends 'quiet' | 'sound'>(
    name: K,
    one: (fields: Fields) => Equipment[K],
  ): Equipment[K] => maybe(all, name, EQUIPMENT[name], () => one(all.inner(name)));
  return {
    oven: part('oven', (oven) => ({
      most: measured(oven, 'most', 'oven'),
      steams: maybe(oven, 'steams', null, () => oven.flag('steams')),
      atDial: measured(oven, 'atDial', 'atDial'),
      preheat: measured(oven, 'preheat', 'preheat'),
      parchment: measured(oven, 'parchment', 'parchment'),
      timer: maybe(oven, 'timer', null, () => oven.flag('timer')),
    })),
    height: measured(all, 'height', 'height'),
    pots: all.has('pots')
      ? all.list('pots', LIMITS.pots.least, LIMITS.pots.most, readPot)
      : EQUIPMENT.pots,
    tins: all.has('tins') ? count(all, 'tins', 'tins') : EQUIPMENT.tins,
    stones: all.has('stones') ? count(all, 'stones', 'stones') : EQUIPMENT.stones,
    fridge: part('fridge', (fridge) => ({
      celsius: measured(fridge, 'celsius', 'fridge'),
      holds: maybe(fridge, 'holds', null, () => count(fridge, 'holds', 'holds')),
    })),
    bowls: part('bowls', (bowls) => ({
      count: maybe(bowls, 'count', null, () => count(bowls, 'count', 'bowls')),
      kilos: bowls.has('kilos')
        ? bowls.number('kilos', LIMITS.kilos.least, LIMITS.kilos.most)
        : EQUIPMENT.bowls.kilos,
      litres: measured(bowls, 'litres', 'bowlLitres'),
    })),
    scale: maybe(all, 'scale', EQUIPMENT.scale, () => all.oneOf('scale', SCALE_STEPS)),
    // `night` of older settings was there before anyone had said so, and no call kept it.
    quiet: nullPart('quiet', (quiet) => ({
      from: quiet.number('from', 0, DAY_MINUTES, true),
      to: quiet.number('to', 0, DAY_MINUTES, true),
    })),
    week: all.has('week') ? all.list('week', 0, LIMITS.week.most, readWindow) : EQUIPMENT.week,
    sound: nullPart('sound', (sound) => {
      const heard = sound.oneOf('heard', [...HEARD, FAINT] as const);
      return { at: sound.number('at', 0, FAR), heard: heard === FAINT ? 'no' : heard };
    }),
    readsOwn: all.has('readsOwn') ? all.flag('readsOwn') : EQUIPMENT.readsOwn,
    pace: all.has('pace') ? all.oneOf('pace', PACE_NAMES) : EQUIPMENT.pace,
    pedal: part('pedal', readPedal),
    mediaKeys: all.has('mediaKeys') ? all.flag('mediaKeys') : EQUIPMENT.mediaKeys,
    ear: all.has('ear') ? all.oneOf('ear', EARS) : EQUIPMENT.ear,
    savedAt: maybe(all, 'savedAt', EQUIPMENT.savedAt, () => all.number('savedAt', 0, FAR)),
  };
};

/**
 * The one reader of the setting `equipment`. Hands back a clean copy, what is missing filled with
 * what is usual, or null with the path, what was expected there and what came. Never set (undefined)
 * reads as nothing said. Never throws.
 */
export function readEquipment(value: unknown): ReadEquipment {
  if (value === undefined) return { equipment: EQUIPMENT };
  try {
    return { equipment: read(value) };
  } catch (error) {
    if (error instanceof Refused) return { equipment: null, reason: error.misread };
    throw error;
  }
}
