import { earKitchen } from '../../core/speech/words/ear-kitchen.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { pedal } from '../../core/speech/words/pedal.ts';
import { soundCheck } from '../../core/speech/words/sound-check.ts';
import { fill } from '../../core/speech/fill.ts';
import { showMinute } from '../../core/speech/show-time.ts';
import type { House } from '../house.ts';

/** What is chosen of the tablet itself, under the name of each choice. */
export interface TabletValues {
  readonly heard: string;
  readonly saved: string;
  readonly night: string;
  readonly pedal: string;
  readonly ear: string;
}

export function tabletValues(house: House): TabletValues {
  const { sound, savedAt, quiet, pedal: keys, ear } = house.equipment();
  const { clock } = house.ways();
  const taught = Object.keys(keys).length;
  return {
    heard:
      sound === null
        ? soundCheck.notDone
        : fill(soundCheck.result, {
            name: soundCheck.results[sound.heard],
            date: house.date(sound.at),
          }),
    saved:
      savedAt === null
        ? kitchenPage.neverSaved
        : fill(kitchenPage.saved, { date: house.date(savedAt) }),
    night:
      quiet === null
        ? kitchenFields.night.never
        : fill(kitchenFields.night.between, {
            time: showMinute(quiet.from, clock),
            until: showMinute(quiet.to, clock),
          }),
    pedal: taught === 0 ? pedal.none : fill(pedal.taught, { count: taught }),
    ear: earKitchen.is[ear],
  };
}
