import { focusOn } from '../../focus.ts';
import { offsetsOf } from '../../../../machines/kitchen/mixes.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { slotOf } from '../../../core/records/reading-slot.ts';
import { crust } from '../../../core/speech/words/crust.ts';
import {
  reading as words,
  readingList,
  readingNames,
} from '../../../core/speech/words/readings.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { sayReading } from '../../../core/speech/reading-text.ts';
import { afterPaint } from '../../../parts/after-paint.ts';
import type { Ways, House } from '../../house.ts';
import { benchView } from '../view.ts';
import { pouredNext, sayWater } from '../water-view.ts';
import { taughtWords } from '../water-words.ts';
import { movedWords } from './moved-words.ts';
import type { Mended } from './page.ts';

interface At {
  readonly house: House;
  readonly bake: string;
  readonly page: { readonly mends: Mended | null };
}

const placeNow = (
  house: House,
  bake: string,
): { stage: string; marks: Readonly<Record<string, number>> } | null => {
  const focus = focusOn(house.kitchen(), bake);
  return focus && { stage: stageOf(focus.machine), marks: focus.machine.context.marks };
};

/** The water that is still to be poured, as it is said; null where there is none. */
const waterNow = (house: House, bake: string, ways: Ways): string | null => {
  const focus = focusOn(house.kitchen(), bake);
  const poured = focus && pouredNext(house.kitchen(), focus, stageOf(focus.machine));
  return poured && sayWater(poured, ways);
};

/** What the last fact taught of the mix, and then what the act it led to says; null where nothing. */
const taughtNow = (house: House, bake: string, ways: Ways): string | null => {
  const results = house.records().at(-1)?.fact.results ?? [];
  const mixed = results.find(({ who, mixed }) => who === bake && mixed)?.mixed;
  const focus = focusOn(house.kitchen(), bake);
  if (mixed === undefined || focus === null) return null;
  const hour = (at: number): string => house.hour(at);
  const { spoken } = benchView(house.kitchen(), focus, hour, null, ways, house.equipment());
  return `${taughtWords(mixed, offsetsOf(house.kitchen(), focus.bake), ways)} ${spoken}`;
};

/** When a loaf whose core was low is to be looked at again, as it is said; null where nothing foretold it. */
const moreNow = (house: House, ways: Ways): string | null => {
  const results = house.records().at(-1)?.fact.results ?? [];
  const minutes = results.find(({ cored }) => cored)?.cored?.more ?? null;
  return minutes === null ? null : fill(crust.more.raw, said({ minutes }, ways));
};

/**
 * Writes a reading, or the correction of one, and says what it changed, else that it was taken;
 * where it led to another act, that act speaks for itself, after what the mix taught. Done once it is
 * written: what it changed is on the glass before it is said.
 */
export async function record({ house, bake, page }: At, reading: Reading): Promise<void> {
  const before = placeNow(house, bake);
  const ways = house.ways();
  const water = waterNow(house, bake, ways);
  await house.take(
    page.mends
      ? { kind: 'correct', target: page.mends.target, reading }
      : { kind: 'reading', by: 'hand', bake, reading },
  );
  const after = placeNow(house, bake);
  if (after?.stage !== before?.stage) {
    const taught = taughtNow(house, bake, ways);
    if (taught !== null) afterPaint(() => house.say(taught));
    return;
  }
  afterPaint(() => {
    const more = moreNow(house, ways);
    if (more !== null) return house.say(more);
    const poured = waterNow(house, bake, ways);
    if (poured !== null && poured !== water) return house.say(poured);
    const moved = movedWords(
      reading,
      page.mends !== null,
      before?.marks ?? {},
      after?.marks ?? {},
      (at) => house.hour(at),
    );
    if (moved !== null) return house.say(moved);
    const text = page.mends ? readingList.corrected : reading.odd ? words.takenOdd : words.taken;
    const name = readingNames[slotOf(reading)].toLowerCase();
    house.say(fill(text, { got: sayReading(reading, ways), name }));
  });
}
