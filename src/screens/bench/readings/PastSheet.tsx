import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import {
  standingReadings,
  type StandingReading,
} from '../../../../machines/kitchen/standing-readings.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { slotOf } from '../../../core/records/reading-slot.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { readingList, readingNames, riseInJar } from '../../../core/speech/words/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showReading } from '../../../core/speech/reading-text.ts';
import type { Units } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { mendingPage, type ReadingPage } from './page.ts';
import { softWords } from '../../../parts/soft-words.ts';
import './readings.css';

/** So many stand on one page at every viewport, without scrolling. */
const A_PAGE = 6;

const isInJar = (reading: Reading): boolean => reading.what === 'rise' && reading.in === 'jar';

/** What stands under a reading beside its hour: whether it is odd, by a probe, and what it was. */
const marksOf = ({ reading, was, by }: StandingReading, units: Units): readonly string[] => [
  ...(isInJar(reading) ? [riseInJar.mark] : []),
  ...(reading.odd ? [readingList.odd] : []),
  ...(by === 'probe' ? [readingList.probe] : []),
  ...(was ? [fill(readingList.was, { got: showReading(was, units) })] : []),
];

/** The readings of this bake that stand, newest first; one press on one corrects it. */
export default function PastSheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const all = createMemo(() => standingReadings(props.house.kitchen(), props.bake));
  const [from, setFrom] = createSignal(0);
  const correct = ({ id, at, reading }: StandingReading): void =>
    props.onTurn({
      ...mendingPage(slotOf(reading), {
        target: id,
        says: showReading(reading, props.house.ways()),
        time: props.house.hour(at),
      }),
      ...(isInJar(reading) ? { jar: true } : {}),
    });
  return (
    <Sheet title={controls.readingsSoFar}>
      <p class="reading-detail">{all().length === 0 ? readingList.none : readingList.how}</p>
      <ol class="reading-list" aria-label={controls.readingsSoFar}>
        <For each={all().slice(from(), from() + A_PAGE)}>
          {(one) => (
            <li>
              <Pressable
                class="reading-row"
                fresh={one.id}
                disabled={!props.house.holds}
                onPress={() => correct(one)}
              >
                <span>{softWords(readingNames[slotOf(one.reading)])}</span>
                <b class="reading-value">{showReading(one.reading, props.house.ways())}</b>
                <span class="reading-mark">
                  {[props.house.hour(one.at), ...marksOf(one, props.house.ways())].join(' · ')}
                </span>
              </Pressable>
            </li>
          )}
        </For>
      </ol>
      <div class="sheet-grid">
        <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
        <Control label={controls.newReading} onPress={() => props.onTurn({ at: 'kinds' })} />
        <Show when={all().length > A_PAGE}>
          <Control
            label={readingList.newer}
            disabled={from() === 0}
            onPress={() => setFrom(Math.max(0, from() - A_PAGE))}
          />
          <Control
            label={readingList.older}
            disabled={from() + A_PAGE >= all().length}
            onPress={() => setFrom(from() + A_PAGE)}
          />
        </Show>
      </div>
    </Sheet>
  );
}
