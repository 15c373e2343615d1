import { focusOn } from '../../focus.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { slotOf } from '../../../core/records/reading-slot.ts';
import { reading as words, readingList, readingNames } from '../../../core/speech/en/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { sayReading } from '../../../core/speech/reading-text.ts';
import type { House } from '../../house.ts';
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

/**
 * Writes a reading, or the correction of one, and says what it changed, else that it was taken;
 * where it led to another act, that act speaks for itself.
 */
export async function record({ house, bake, page }: At, reading: Reading): Promise<void> {
  const before = placeNow(house, bake);
  await house.take(
    page.mends
      ? { kind: 'correct', target: page.mends.target, reading }
      : { kind: 'reading', by: 'hand', bake, reading },
  );
  const after = placeNow(house, bake);
  if (after?.stage !== before?.stage) return;
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
  house.say(fill(text, { got: sayReading(reading, house.ways()), name }));
}
